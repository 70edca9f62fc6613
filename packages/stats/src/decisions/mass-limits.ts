/** Limits of the uniformity of mass; masses in the unit of the data. */
export interface MassLimits {
  /** Mean mass from which the second limit holds. */
  readonly classEdge: number;
  /** Allowed deviation from the mean, below and from the class edge. */
  readonly limitBelow_pct: number;
  readonly limitFrom_pct: number;
}

/** Ph. Eur. 2.9.5, table 2.9.5.-1, capsules: below 300 mg 10 %, from 300 mg 7.5 %; masses in mg. */
export const MASS_LIMITS: MassLimits = { classEdge: 300, limitBelow_pct: 10, limitFrom_pct: 7.5 };

/** Number of units tested, and how many of them may deviate by more than the limit (none by more than twice it). */
export const MASS_SAMPLE_SIZE = 20;
export const MOST_BEYOND_LIMIT = 2;
