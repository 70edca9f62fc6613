import type { CompressionLaw } from '#materials';

/** One bore of the disc with the pins above it. Densities in g/mL are mg/mm3. */
export interface DiscRun {
  readonly boreArea_mm2: number;
  readonly discHeight_mm: number;
  /** Depth of each pin at its stop, below the disc's top face, first station first; 0 is flush. */
  readonly depths_mm: readonly number[];
  readonly feedDensity_g_per_mL: number;
  /** One factor for the refill of every station. */
  readonly refill_ratio: number;
  /** Powder that a pin drags in on its way down, per tamp. */
  readonly captured_mg: number;
  readonly law: CompressionLaw;
  readonly preload_N: number;
  readonly rate_N_per_mm: number;
  readonly isRefilledAfterLastPin: boolean;
}
