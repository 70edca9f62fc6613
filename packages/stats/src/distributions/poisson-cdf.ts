import type { PoissonPoint } from './poisson-tails.ts';
import { poissonTails } from './poisson-tails.ts';

/**
 * Probability of a value up to k: Poisson law.
 *
 * @param point - k: whole; mean: 0 to 1e9
 * @returns probability of a value up to k, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source Abramowitz, Stegun (1964) 26.4.21 (gamma tails)
 * @validity relative error below 1e-12 where the probability is the smaller one; for the other side use `poissonSurvival`
 */
export function poissonCdf(point: PoissonPoint): number {
  return poissonTails(point).lower;
}
