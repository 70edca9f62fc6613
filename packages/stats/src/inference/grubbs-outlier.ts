import { requireWithin } from '#elementary';
import { grubbsCritical } from './grubbs-critical.ts';
import { sampleSummary } from './sample-summary.ts';

/** The value farthest from the mean. It is flagged, never dropped. */
export interface GrubbsOutlier {
  /** Place in the sample, from 0. */
  readonly index: number;
  readonly value: number;
  readonly statistic: number;
  readonly critical: number;
  readonly isOutlying: boolean;
}

/**
 * Grubbs' two-sided test for one outlier.
 *
 * @param sample - values: three at least, not all equal; significance: 0.05 unless given
 * @returns the value farthest from the mean, its distance in sd, the critical value, whether it lies beyond
 * @throws StatsError "not-finite", "out-of-range" (fewer than three values, or all equal)
 * @source F. E. Grubbs (1969), Technometrics 11, 1-21
 * @validity one outlier among normal values; two on one side can hide each other. No reason to leave a value out
 */
export function grubbsOutlier(sample: {
  readonly values: readonly number[];
  readonly significance?: number;
}): GrubbsOutlier {
  const { values, significance = 0.05 } = sample;
  const critical = grubbsCritical({ n: values.length, significance });
  const { mean, sd } = sampleSummary(sample);
  requireWithin({ sd }, { above: 0 });
  const distances = values.map((value) => Math.abs(value - mean));
  const index = distances.reduce((far, distance, i) => (distance > distances[far]! ? i : far), 0);
  const statistic = distances[index]! / sd;
  return { index, value: values[index]!, statistic, critical, isOutlying: statistic > critical };
}
