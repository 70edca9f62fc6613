import type { HypergeometricPoint } from './hypergeometric-pmf.ts';
import { hypergeometricTails } from './hypergeometric-tails.ts';

/**
 * Probability of a value up to k: hypergeometric law.
 *
 * @param point - k: whole; lotSize: whole, 1 to 1e9; defectiveCount, sampleSize: whole, 0 to lotSize
 * @returns probability of a value up to k, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source definition; tails by summing away from the mode
 * @validity relative error below 1e-12 where the probability is the smaller one; for the other side use `hypergeometricSurvival`
 */
export function hypergeometricCdf(point: HypergeometricPoint): number {
  return hypergeometricTails(point).lower;
}
