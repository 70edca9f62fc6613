import type { Letter } from '../number-reference.ts';

/** An equation that was chosen for one number: other lines than the catalogue's, with all their values. */
export interface ChosenEquation {
  readonly latex: string;
  readonly values: Readonly<Record<string, number>>;
  readonly inDrawing: readonly Letter[];
}
