import type { BinomialPoint } from './binomial-tails.ts';
import { binomialTails } from './binomial-tails.ts';

/**
 * Probability of a value above k, accurate when small: binomial law.
 *
 * @param point - k: whole; n: whole, 0 to 1e9; p: 0 to 1
 * @returns probability of a value above k, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source Abramowitz, Stegun (1964) 26.5.24 (beta tails)
 * @validity relative error below 1e-12 where the probability is the smaller one; for the other side use `binomialCdf`
 */
export function binomialSurvival(point: BinomialPoint): number {
  return binomialTails(point).upper;
}
