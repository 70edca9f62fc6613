import { requireWithin, StatsError } from '#elementary';

export interface CusumChartInput {
  /** One or more, in time order. */
  readonly values: readonly number[];
  readonly target: number;
  /** Standard deviation of one plotted value. */
  readonly sigma: number;
  /** Reference value k, in standard deviations: half the shift to be found. */
  readonly reference: number;
  /** Decision interval h, in standard deviations. */
  readonly decisionInterval: number;
  /** Both sums start at this share of the decision interval; left out: 0. */
  readonly headStart_frac?: number;
}

interface CusumPoint {
  readonly upperSum: number;
  readonly lowerSum: number;
  /** Points since the upper sum was last 0. */
  readonly upperRun: number;
  readonly lowerRun: number;
}

export interface CusumChart {
  readonly points: readonly CusumPoint[];
  /** Absent when no sum passes the decision interval. */
  readonly signal?: {
    /** Number of the point, from 1. */
    readonly at: number;
    readonly side: 'upper' | 'lower';
    /** Estimate of the mean since the shift. */
    readonly mean: number;
  };
}

/**
 * Chart of two cumulative sums, with head start, and the estimate of the mean at the first signal.
 *
 * C+ = max(0, x - (target + K) + C+), C- = max(0, (target - K) - x + C-), K = k sigma, signal when a sum is strictly above
 * H = h sigma; the sums go on after a signal. Mean: target + K + C+/N+ or target - K - C-/N-, N counting from the last 0.
 *
 * @param input - see the fields; reference 0 or more, decisionInterval and sigma above 0, headStart_frac 0 to below 1
 * @returns both sums and run counts at every point, and the first signal
 * @throws StatsError "sample-size" (no value), "not-finite", "out-of-range"
 * @source ISO 7870-4 (secondary); D. C. Montgomery, Introduction to Statistical Quality Control, chapter 9 (from memory)
 * @validity independent values with known sigma; the estimate is biased upward by the choice of the moment, and contains
 *   what is left of a head start
 */
export function cusumChart(input: CusumChartInput): CusumChart {
  const { values, target, sigma, reference, decisionInterval, headStart_frac = 0 } = input;
  requireWithin({ target });
  requireWithin({ reference }, { min: 0 });
  requireWithin({ sigma, decisionInterval }, { above: 0 });
  requireWithin({ headStart_frac }, { min: 0, below: 1 });
  if (values.length === 0) throw new StatsError('sample-size', { valueCount: 0, min: 1 });
  const slack = reference * sigma;
  const limit = decisionInterval * sigma;
  const start = headStart_frac * limit;
  let last: CusumPoint = { upperSum: start, lowerSum: start, upperRun: 0, lowerRun: 0 };
  const points = values.map((value) => {
    requireWithin({ value });
    const upperSum = Math.max(0, value - (target + slack) + last.upperSum);
    const lowerSum = Math.max(0, target - slack - value + last.lowerSum);
    const upperRun = upperSum > 0 ? last.upperRun + 1 : 0;
    last = { upperSum, lowerSum, upperRun, lowerRun: lowerSum > 0 ? last.lowerRun + 1 : 0 };
    return last;
  });
  const at = points.findIndex(({ upperSum, lowerSum }) => upperSum > limit || lowerSum > limit);
  if (at < 0) return { points };
  const { upperSum, lowerSum, upperRun, lowerRun } = points[at]!;
  const side = upperSum >= lowerSum ? 'upper' : 'lower';
  const mean = side === 'upper' ? target + slack + upperSum / upperRun : target - slack - lowerSum / lowerRun;
  return { points, signal: { at: at + 1, side, mean } };
}
