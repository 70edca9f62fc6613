import type { BetaInput } from './checked-beta-tails.ts';
import { checkedBetaTails } from './checked-beta-tails.ts';

/**
 * Probability of a value above x, accurate when small: beta law.
 *
 * @param point - x: any finite number; alpha, beta: 0.005 to 1e9
 * @returns probability of a value above x, 0 to 1
 * @throws StatsError "not-finite", "out-of-range"
 * @source A. R. DiDonato, A. H. Morris (1992), ACM algorithm 708
 * @validity relative error below 1e-12 where the probability is the smaller one; for the other side use `betaCdf`
 */
export function betaSurvival(point: BetaInput): number {
  return checkedBetaTails(point).upper;
}
