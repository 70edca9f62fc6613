import { requireWithin } from '#elementary';
import { poissonTails } from './poisson-tails.ts';
import type { Tail } from './tail.ts';
import { wholeQuantile } from './whole-quantile.ts';

/**
 * Quantile of the Poisson law.
 *
 * @param input - p: above 0 and below 1, counted from `tail` (lower unless given); mean: 0 to 1e9
 * @returns least k with P(X <= k) >= p, or with P(X > k) <= p for the upper tail
 * @throws StatsError "not-finite", "out-of-range"
 * @source definition
 * @validity see `wholeQuantile`
 */
export function poissonQuantile(input: { readonly p: number; readonly mean: number; readonly tail?: Tail }): number {
  const { p, mean, tail = 'lower' } = input;
  requireWithin({ mean }, { min: 0, max: 1e9 });
  return wholeQuantile({ tailsAt: (k) => poissonTails({ k, mean }), p, tail, least: 0, greatest: Infinity });
}
