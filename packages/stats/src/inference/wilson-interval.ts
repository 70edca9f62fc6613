import { normalQuantile } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';
import type { CountedShare } from './clopper-pearson-interval.ts';

/**
 * Score confidence limits of a proportion: shorter than the exact ones, coverage near the confidence, sometimes below.
 *
 * @param share - n: whole, 1 to 1e9; count: whole, 0 to n; confidence: above 0 and below 1, 0.95 unless given
 * @returns estimate and two-sided limits
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source E. B. Wilson (1927), J. Am. Stat. Assoc. 22, 209-212, without continuity correction
 */
export function wilsonInterval(share: CountedShare): { estimate: number; low: number; high: number } {
  const { count, n, confidence = 0.95 } = share;
  requireWhole({ n }, { min: 1, max: 1e9 });
  requireWhole({ count }, { min: 0, max: n });
  requireWithin({ confidence }, { above: 0, below: 1 });
  const z = -normalQuantile(0.5 * (1 - confidence));
  const estimate = count / n;
  const centre = count + 0.5 * z * z;
  const reach = z * Math.sqrt(count * (1 - estimate) + 0.25 * z * z);
  const whole = n + z * z;
  return {
    estimate,
    low: count === 0 ? 0 : (centre - reach) / whole,
    high: count === n ? 1 : (centre + reach) / whole,
  };
}
