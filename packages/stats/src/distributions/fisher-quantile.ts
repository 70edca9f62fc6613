import { requireWithin } from '#elementary';
import { oddsQuantile } from './odds-quantile.ts';
import type { Tail } from './tail.ts';

/**
 * Quantile of the F law.
 *
 * @param input - p: above 0 and below 1, counted from `tail` (lower unless given); both degrees of freedom: 0.01 to 1e9
 * @returns x with P(X <= x) = p, or P(X > x) = p for the upper tail
 * @throws StatsError "not-finite", "out-of-range" (also where the quantile lies above 1e300)
 * @source inverse of `fisherTails`
 * @validity relative error below 1e-12
 */
export function fisherQuantile(input: {
  readonly p: number;
  readonly numeratorDf: number;
  readonly denominatorDf: number;
  readonly tail?: Tail;
}): number {
  const { p, numeratorDf, denominatorDf, tail = 'lower' } = input;
  requireWithin({ numeratorDf, denominatorDf }, { min: 0.01, max: 1e9 });
  const odds = oddsQuantile({ p, alpha: 0.5 * numeratorDf, beta: 0.5 * denominatorDf, tail });
  return (odds * denominatorDf) / numeratorDf;
}
