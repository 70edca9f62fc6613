import { requireWithin } from '#elementary';
import type { Tail } from './tail.ts';
import { unitGammaQuantile } from './unit-gamma-quantile.ts';

/**
 * Quantile of the chi-square law.
 *
 * @param input - p: above 0 and below 1, counted from `tail` (lower unless given); degreesOfFreedom: 0.01 to 1e9, whole or
 *   not
 * @returns x with P(X <= x) = p, or P(X > x) = p for the upper tail; 0 where x lies below 2e-300
 * @throws StatsError "not-finite", "out-of-range"
 * @source inverse of `gammaTails`, Abramowitz, Stegun (1964) 26.4.19
 * @validity relative error below 1e-12
 */
export function chiSquareQuantile(input: {
  readonly p: number;
  readonly degreesOfFreedom: number;
  readonly tail?: Tail;
}): number {
  const { p, degreesOfFreedom, tail = 'lower' } = input;
  requireWithin({ degreesOfFreedom }, { min: 0.01, max: 1e9 });
  return 2 * unitGammaQuantile({ p, shape: 0.5 * degreesOfFreedom, tail });
}
