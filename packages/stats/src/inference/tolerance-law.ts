import { requireWhole, requireWithin } from '#elementary';

/** What a tolerance interval promises, and from how much data. */
export interface ToleranceInput {
  /** Number of values behind the mean. */
  readonly n: number;
  /** Share of the population that shall lie inside. */
  readonly content: number;
  /** Probability that it does. */
  readonly confidence: number;
  /** Degrees of freedom of the standard deviation: n - 1 unless pooled from elsewhere. */
  readonly degreesOfFreedom?: number;
}

/**
 * The same with its degrees of freedom, after a look at the input.
 *
 * @param input - n: whole, 2 to 1e7 (1 with its own degrees of freedom); content, confidence: above 0 and below 1
 * @returns all four numbers
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source house rule: NaN never turns into a result
 */
export function toleranceLaw(input: ToleranceInput): Required<ToleranceInput> {
  const { n, content, confidence, degreesOfFreedom = n - 1 } = input;
  requireWhole({ n }, { min: input.degreesOfFreedom === undefined ? 2 : 1, max: 1e7 });
  requireWithin({ content, confidence }, { above: 0, below: 1 });
  requireWithin({ degreesOfFreedom }, { min: 1, max: 1e7 });
  return { n, content, confidence, degreesOfFreedom };
}
