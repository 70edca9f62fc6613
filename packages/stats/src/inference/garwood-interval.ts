import { chiSquareQuantile } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';

/**
 * Exact confidence limits of the mean of a Poisson count.
 *
 * @param counted - count: whole, 0 to 1e8; confidence: above 0 and below 1, 0.95 unless given
 * @returns two-sided limits of the mean, and the one-sided upper limit at the whole confidence
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source F. Garwood (1936), Biometrika 28, 437-442
 */
export function garwoodInterval(counted: { readonly count: number; readonly confidence?: number }): {
  low: number;
  high: number;
  upperOneSided: number;
} {
  const { count, confidence = 0.95 } = counted;
  requireWhole({ count }, { min: 0, max: 1e8 });
  requireWithin({ confidence }, { above: 0, below: 1 });
  const p = 0.5 * (1 - confidence);
  const upper = (tail: number): number =>
    0.5 * chiSquareQuantile({ p: tail, degreesOfFreedom: 2 * count + 2, tail: 'upper' });
  return {
    low: count === 0 ? 0 : 0.5 * chiSquareQuantile({ p, degreesOfFreedom: 2 * count }),
    high: upper(p),
    upperOneSided: upper(1 - confidence),
  };
}
