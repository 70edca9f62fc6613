import { requireWithin } from '#elementary';
import type { Tail } from './tail.ts';
import { unitGammaQuantile } from './unit-gamma-quantile.ts';

/**
 * Quantile of the gamma law.
 *
 * @param input - p: above 0 and below 1, counted from `tail` (lower unless given); shape: 0.005 to 1e9; scale: above 0, 1
 *   unless given
 * @returns x with P(X <= x) = p, or P(X > x) = p for the upper tail; 0 where x / scale lies below 1e-300
 * @throws StatsError "not-finite", "out-of-range"
 * @source inverse of `gammaTails`
 * @validity relative error below 1e-12
 */
export function gammaQuantile(input: {
  readonly p: number;
  readonly shape: number;
  readonly scale?: number;
  readonly tail?: Tail;
}): number {
  const { p, shape, scale = 1, tail = 'lower' } = input;
  requireWithin({ shape }, { min: 0.005, max: 1e9 });
  requireWithin({ scale }, { above: 0 });
  return scale * unitGammaQuantile({ p, shape, tail });
}
