import type { GammaInput } from './checked-gamma-tails.ts';
import { checkedGammaTails } from './checked-gamma-tails.ts';

/**
 * Probability of a value above x, accurate when small: gamma law.
 *
 * @param point - x: any finite number (0 below 0); shape: 0.005 to 1e9; scale: above 0, 1 unless given
 * @returns probability of a value above x, 0 to 1
 * @throws StatsError "not-finite", "out-of-range"
 * @source Abramowitz, Stegun (1964) 6.5.29, 6.5.31
 * @validity relative error below 1e-12 where the probability is the smaller one; for the other side use `gammaCdf`
 */
export function gammaSurvival(point: GammaInput): number {
  return checkedGammaTails(point).upper;
}
