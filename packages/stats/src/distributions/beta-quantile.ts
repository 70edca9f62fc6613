import { requireWithin } from '#elementary';
import { oddsQuantile } from './odds-quantile.ts';
import type { Tail } from './tail.ts';

/**
 * Quantile of the beta law.
 *
 * @param input - p: above 0 and below 1, counted from `tail` (lower unless given); alpha, beta: 0.005 to 1e9
 * @returns x with P(X <= x) = p, or P(X > x) = p for the upper tail, 0 to 1
 * @throws StatsError "not-finite", "out-of-range" (also where 1 - x lies below 1e-300)
 * @source inverse of `betaTails`
 * @validity relative error below 1e-12
 */
export function betaQuantile(input: {
  readonly p: number;
  readonly alpha: number;
  readonly beta: number;
  readonly tail?: Tail;
}): number {
  const { p, alpha, beta, tail = 'lower' } = input;
  requireWithin({ alpha, beta }, { min: 0.005, max: 1e9 });
  const odds = oddsQuantile({ p, alpha, beta, tail });
  return odds > 1 ? 1 / (1 + 1 / odds) : odds / (1 + odds);
}
