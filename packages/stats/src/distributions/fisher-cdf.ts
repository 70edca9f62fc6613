import type { FisherPoint } from './fisher-tails.ts';
import { fisherTails } from './fisher-tails.ts';

/**
 * Probability of a value up to x: F law of a ratio of two variances.
 *
 * @param point - x: any finite number (0 below 0); numeratorDf, denominatorDf: 0.01 to 1e9, whole or not
 * @returns probability of a value up to x, 0 to 1
 * @throws StatsError "not-finite", "out-of-range"
 * @source Abramowitz, Stegun (1964) 26.6.2
 * @validity relative error below 1e-12 where the probability is the smaller one; for the other side use `fisherSurvival`
 */
export function fisherCdf(point: FisherPoint): number {
  return fisherTails(point).lower;
}
