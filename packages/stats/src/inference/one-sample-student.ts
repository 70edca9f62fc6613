import type { SampleSummary } from './sample-summary.ts';
import { sampleSummary } from './sample-summary.ts';
import type { StudentInference } from './student-inference.ts';
import { studentInference } from './student-inference.ts';
import { varianceInterval } from './variance-interval.ts';

/** A t test of one mean, with the limits of mean and variance. */
export interface OneSampleInference extends SampleSummary, StudentInference {
  readonly varianceLow: number;
  readonly varianceHigh: number;
}

/**
 * Test of the mean of one sample against a reference, with confidence intervals of mean and variance.
 *
 * @param sample - values: two at least, not all equal; reference: in their unit; confidence: 0.95 unless given
 * @returns summary, statistic, p value (two-sided), limits of the mean and of the variance
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (all values equal)
 * @source Student (1908), Biometrika 6, 1-25; see `varianceInterval`
 * @validity independent values from one normal law
 */
export function oneSampleStudent(sample: {
  readonly values: readonly number[];
  readonly reference: number;
  readonly confidence?: number;
}): OneSampleInference {
  const { values, reference, confidence = 0.95 } = sample;
  const summary = sampleSummary({ values });
  const degreesOfFreedom = summary.count - 1;
  const standardError = summary.sd / Math.sqrt(summary.count);
  const inference = studentInference({
    ...{ estimate: summary.mean, standardError, degreesOfFreedom, reference, confidence },
  });
  const { low, high } = varianceInterval({ variance: summary.variance, degreesOfFreedom, confidence });
  return { ...summary, ...inference, varianceLow: low, varianceHigh: high };
}
