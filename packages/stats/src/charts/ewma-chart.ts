import { pow, requireWithin, StatsError } from '#elementary';

export interface EwmaChartInput {
  /** One or more, in time order. */
  readonly values: readonly number[];
  readonly target: number;
  /** Standard deviation of one plotted value. */
  readonly sigma: number;
  /** Weight of the newest value. */
  readonly lambda: number;
  /** Width of the limits in standard deviations of the average. */
  readonly limitFactor: number;
}

export interface EwmaChart {
  readonly points: readonly { readonly average: number; readonly lower: number; readonly upper: number }[];
  /** Number of the first point outside its limits, from 1; absent when there is none. */
  readonly firstSignal?: number;
  /** Half width of the limits after a long time. */
  readonly finalHalfWidth: number;
}

/**
 * Chart of the exponentially weighted moving average with limits that widen from the start to their final width.
 *
 * z_i = lambda x_i + (1 - lambda) z_(i-1), z_0 = target; limits target +- L sigma sqrt(lambda/(2 - lambda) (1 - (1 - lambda)^2i)).
 *
 * @param input - see the fields; lambda above 0, up to 1; limitFactor above 0; sigma above 0
 * @returns average and limits at every point, first signal (strictly outside), final half width
 * @throws StatsError "sample-size" (no value), "not-finite", "out-of-range"
 * @source ISO 7870-6 (secondary); S. W. Roberts, Technometrics 1 (1959) 239-250 (from memory)
 * @validity independent values with known sigma
 */
export function ewmaChart(input: EwmaChartInput): EwmaChart {
  const { values, target, sigma, lambda, limitFactor } = input;
  requireWithin({ target });
  requireWithin({ sigma, limitFactor }, { above: 0 });
  requireWithin({ lambda }, { above: 0, max: 1 });
  if (values.length === 0) throw new StatsError('sample-size', { valueCount: 0, min: 1 });
  const finalHalfWidth = limitFactor * sigma * Math.sqrt(lambda / (2 - lambda));
  let average = target;
  const points = values.map((value, i) => {
    requireWithin({ value });
    average = lambda * value + (1 - lambda) * average;
    const halfWidth = finalHalfWidth * Math.sqrt(1 - pow(1 - lambda, 2 * (i + 1)));
    return { average, lower: target - halfWidth, upper: target + halfWidth };
  });
  const first = points.findIndex((point) => point.average > point.upper || point.average < point.lower);
  return { points, finalHalfWidth, ...(first < 0 ? {} : { firstSignal: first + 1 }) };
}
