import type { ChartConstants } from './chart-constants.ts';
import { chartConstants } from './chart-constants.ts';
import type { ControlLimits } from './control-limits.ts';
import type { Subgroups } from './subgroup-summary.ts';
import { subgroupSummaries } from './subgroup-summary.ts';

export interface MeanAndSdLimits {
  /** Mean of all values. */
  readonly grandMean: number;
  /** Plain mean of the standard deviations of the subgroups. */
  readonly meanSd: number;
  /** Root of the pooled variance; not used for the limits. */
  readonly pooledSd: number;
  /** Estimate of sigma on which the limits rest. */
  readonly sigma: number;
  /** Limits for the size of each subgroup, in the order of the subgroups. */
  readonly perSubgroup: readonly {
    readonly size: number;
    readonly means: ControlLimits;
    readonly sds: ControlLimits;
  }[];
}

/**
 * Limits of a chart of means and a chart of standard deviations, three standard deviations out; sizes may differ.
 *
 * sigma = sum(h s/c4) / sum(h), h = c4^2/(1 - c4^2): the linear estimate of least variance; with equal sizes it is the mean
 * standard deviation divided by c4.
 *
 * @param input - subgroups: two or more of 2 or more values each
 * @returns mean of all values, mean and pooled standard deviation, estimate of sigma, limits for every subgroup
 * @throws StatsError "sample-size", "not-finite", "out-of-range"
 * @source ISO 7870-2 (secondary): mean +- A sigma, B5 sigma to B6 sigma; weights: I. W. Burr, J. Qual. Technol. 1 (1969)
 *   163-167 (from memory; they follow from var(s/c4) = sigma^2 (1 - c4^2)/c4^2)
 * @validity values independent within a subgroup; limits from few subgroups are uncertain
 */
export function meanAndSdLimits(input: Subgroups): MeanAndSdLimits {
  const summaries = subgroupSummaries(input);
  const factors = new Map<number, ChartConstants>();
  for (const { size } of summaries) if (!factors.has(size)) factors.set(size, chartConstants({ n: size }));
  let [count, total, squares, weights, weighted] = [0, 0, 0, 0, 0];
  for (const { size, mean, sd } of summaries) {
    const { c4 } = factors.get(size)!;
    const weight = (c4 * c4) / (1 - c4 * c4);
    count += size;
    total += size * mean;
    squares += (size - 1) * sd * sd;
    weights += weight;
    weighted += (weight * sd) / c4;
  }
  const grandMean = total / count;
  const sigma = weighted / weights;
  return {
    ...{ grandMean, sigma, pooledSd: Math.sqrt(squares / (count - summaries.length)) },
    meanSd: summaries.reduce((sum, one) => sum + one.sd, 0) / summaries.length,
    perSubgroup: summaries.map(({ size }) => {
      const { A, c4, B5, B6 } = factors.get(size)!;
      return {
        size,
        means: { centre: grandMean, lower: grandMean - A * sigma, upper: grandMean + A * sigma },
        sds: { centre: c4 * sigma, lower: B5 * sigma, upper: B6 * sigma },
      };
    }),
  };
}
