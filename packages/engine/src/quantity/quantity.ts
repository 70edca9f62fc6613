/** A value that was measured n times; `sd` is that of the single values, so the mean is known to sd / sqrt(n). */
export interface Measured {
  readonly basis: 'measured';
  readonly mean: number;
  readonly sd: number;
  readonly n: number;
  readonly method?: string;
  readonly date?: string;
  /** The sd was not given: it is the repeatability of the method, see `repeatability`. */
  readonly sdAssumed?: true;
}

/** A default nobody measured: wide on purpose, called a guess, and it says which measurement would halve it. */
export interface Guess {
  readonly basis: 'guess';
  readonly mean: number;
  readonly sd: number;
  /** Code of the measurement that would narrow it most; `words` names it. */
  readonly halvedBy: string;
}

/** A value learned from weights of a trial or of earlier lots. */
export interface Calibrated {
  readonly basis: 'calibrated';
  readonly mean: number;
  readonly sd: number;
  readonly from: string;
}

/**
 * What is known of one number, in the unit of its key. This is ignorance: it makes the interval of a mean.
 * What differs from capsule to capsule is a `Population` or a `SpreadComponent` and never enters here.
 */
export type Quantity = Measured | Guess | Calibrated;

/** A property that differs from piece to piece (mass of shells): mean and sd of the pieces, and how many were measured. */
export interface Population {
  readonly mean: number;
  readonly sd: number;
  readonly n: number;
}
