import { StatsError } from '#elementary';
import { chartConstants } from './chart-constants.ts';
import type { ControlLimits } from './control-limits.ts';
import type { Subgroups } from './subgroup-summary.ts';
import { subgroupSummaries } from './subgroup-summary.ts';

export interface MeanAndRangeLimits {
  readonly grandMean: number;
  readonly meanRange: number;
  /** Mean range divided by d2: standard deviation within subgroups. */
  readonly sigma: number;
  readonly means: ControlLimits;
  readonly ranges: ControlLimits;
}

/**
 * Limits of a chart of means and a chart of ranges, three standard deviations out, from subgroups of one size.
 *
 * @param input - subgroups: two or more of the same size, 2 or more values each
 * @returns mean of all, mean range, estimate of sigma, limits of both charts
 * @throws StatsError "sample-size", "wrong-length" (subgroups of different sizes), "not-finite", "out-of-range"
 * @source ISO 7870-2 (secondary): mean +- A2 Rbar, D3 Rbar to D4 Rbar
 * @validity values independent within a subgroup; sigma is that within subgroups: if one stroke is a subgroup it is the
 *   spread between stations. Limits from few subgroups are uncertain, see `estimatedLimitsRunLength`
 */
export function meanAndRangeLimits(input: Subgroups): MeanAndRangeLimits {
  const summaries = subgroupSummaries(input);
  const n = summaries[0]!.size;
  for (const { size } of summaries) if (size !== n) throw new StatsError('wrong-length', { size, min: n, max: n });
  const { d2, A2, D3, D4 } = chartConstants({ n });
  const average = (of: (one: (typeof summaries)[number]) => number): number =>
    summaries.reduce((sum, one) => sum + of(one), 0) / summaries.length;
  const grandMean = average((one) => one.mean);
  const meanRange = average((one) => one.range);
  return {
    ...{ grandMean, meanRange, sigma: meanRange / d2 },
    means: { centre: grandMean, lower: grandMean - A2 * meanRange, upper: grandMean + A2 * meanRange },
    ranges: { centre: meanRange, lower: D3 * meanRange, upper: D4 * meanRange },
  };
}
