import { requireWhole, requireWithin } from '#elementary';
import { gammaTails } from './gamma-tails.ts';
import type { Tails } from './tail.ts';

/** A Poisson law and a count. */
export interface PoissonPoint {
  readonly k: number;
  readonly mean: number;
}

/**
 * Both tails of the Poisson law.
 *
 * @param point - k: whole; mean: 0 to 1e9
 * @returns probabilities of a count up to k and above k
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source Abramowitz, Stegun (1964) 26.4.21
 * @validity relative error of the smaller tail below 1e-12
 */
export function poissonTails({ k, mean }: PoissonPoint): Tails {
  requireWhole({ k });
  requireWithin({ mean }, { min: 0, max: 1e9 });
  if (k < 0) return { lower: 0, upper: 1 };
  const { lower, upper } = gammaTails({ x: mean, shape: k + 1 });
  return { lower: upper, upper: lower };
}
