/** Why a line is struck. `words` has a sentence for each, and what to do. */
export const STRUCK_REASONS = [
  'blank',
  'heading',
  'total-or-mean',
  'no-value',
  'unstable',
  'thousands-mark',
  'two-values',
  'unit-not-known',
  'not-positive',
  'not-clear',
  'place-not-clear',
] as const;

export type StruckReason = (typeof STRUCK_REASONS)[number];

/** What is wrong with the text as a whole. `words` has a sentence for each. */
export const WEIGHTS_FAULTS = [
  'no-weights',
  'unit-missing',
  'unit-not-known',
  'units-mixed',
  'columns-not-clear',
  'columns-twice',
  'gross-and-net',
  'too-many-lines',
  'not-a-revolution',
  'all-equal',
  'pair-incomplete',
] as const;

export interface WeightsFault {
  readonly code: (typeof WEIGHTS_FAULTS)[number];
  /** First line that shows it. */
  readonly line?: number;
  readonly value?: string;
  readonly facts?: Readonly<Record<string, number | string>>;
}
