/** One thing that is wrong with an input, as numbers and names; `words` makes the sentence. */
export interface InputFault {
  readonly code:
    | 'missing'
    | 'unknown-field'
    | 'wrong-kind'
    | 'not-finite'
    | 'out-of-range'
    | 'not-a-choice'
    | 'wrong-length'
    | 'decimal-comma'
    | 'unit-missing'
    | 'unit-wrong'
    | 'quote-it'
    | 'syntax'
    | 'conflict';
  /** Path of the field, joined by points: `parts.0.material.bulkDensity_g_per_mL`. */
  readonly field: string;
  /** The value as the person wrote it. */
  readonly value?: string;
  /** What would be allowed: a range, the choices, the kind. */
  readonly allowed?: string;
  /** The nearest known name, if there is one. */
  readonly nearest?: string;
  /** For `conflict` and `syntax`: which rule, and its numbers. */
  readonly rule?: string;
  readonly facts?: Readonly<Record<string, number | string>>;
}
