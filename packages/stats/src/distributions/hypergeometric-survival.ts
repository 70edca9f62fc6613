import type { HypergeometricPoint } from './hypergeometric-pmf.ts';
import { hypergeometricTails } from './hypergeometric-tails.ts';

/**
 * Probability of a value above k, accurate when small: hypergeometric law.
 *
 * @param point - k: whole; lotSize: whole, 1 to 1e9; defectiveCount, sampleSize: whole, 0 to lotSize
 * @returns probability of a value above k, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source definition; tails by summing away from the mode
 * @validity relative error below 1e-12 where the probability is the smaller one; for the other side use `hypergeometricCdf`
 */
export function hypergeometricSurvival(point: HypergeometricPoint): number {
  return hypergeometricTails(point).upper;
}
