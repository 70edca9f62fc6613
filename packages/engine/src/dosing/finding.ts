/** Every verdict about a material or a prediction. `words` has a sentence for each. */
export type FindingCode =
  | 'bed-level-counts'
  | 'bore-too-wide'
  | 'by-crumbling'
  | 'disc-outside-validated'
  | 'disc-too-tall'
  | 'does-not-fit'
  | 'flow-poor'
  | 'flow-suits'
  | 'flow-too-free'
  | 'flow-too-poor'
  | 'force-beyond-record'
  | 'leaks-under-disc'
  | 'limited'
  | 'loose-last-refill'
  | 'no-disc-for-size'
  | 'no-geometry'
  | 'no-slug'
  | 'on-spring'
  | 'outside-validated'
  | 'pins-cannot-reach'
  | 'slug-unknown'
  | 'slug-wider-than-body';

/** A verdict about a material or a prediction, as a code with numbers and the rule behind it. */
export interface Finding {
  readonly code: FindingCode;
  readonly numbers: Readonly<Record<string, number | string>>;
  /** Catalogue id or short name of the rule. */
  readonly rule: string;
}
