import type { Figure } from './figure.ts';

/** Figures of one size of shell; what is not known is left out, never 0. */
export interface ShellRecord {
  readonly size: string;
  readonly bodyVolume_mm3?: Figure;
  readonly gelatinMass_mg?: Figure;
  readonly hpmcMass_mg?: Figure;
  readonly bodyLength_mm?: Figure;
  readonly capLength_mm?: Figure;
  /** Locked, over both ends. */
  readonly closedLength_mm?: Figure;
  readonly bodyOuterDiameter_mm?: Figure;
  readonly capOuterDiameter_mm?: Figure;
  /** What a gauge over the flattened wall reads: twice the wall. */
  readonly bodyDoubleWall_mm?: Figure;
  readonly capDoubleWall_mm?: Figure;
}
