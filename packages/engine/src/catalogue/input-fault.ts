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
    | 'thousands-mark'
    | 'duplicate-key'
    | 'syntax'
    | 'file'
    | 'conflict';
  /** Path of the field, joined by points: `parts.0.material.bulkDensity_g_per_mL`. */
  readonly field: string;
  /** The value as the person wrote it. */
  readonly value?: string;
  /** What would be allowed: a range, the choices, the kind. */
  readonly allowed?: string;
  /** The nearest known name, if there is one. */
  readonly nearest?: string;
  /** For `conflict`, `syntax` and `file`: which rule, and its numbers; `unit-wrong`: the value in the known unit. */
  readonly rule?: string;
  readonly facts?: Readonly<Record<string, number | string>>;
}

/** A fault with its place in a file, counted from 1 as editors do. */
export interface FileFault extends InputFault {
  /** Path of the file as the person would name it. */
  readonly file: string;
  readonly line?: number;
  readonly column?: number;
}
