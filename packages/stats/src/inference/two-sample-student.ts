import { sampleSummary } from './sample-summary.ts';
import { satterthwaite } from './satterthwaite.ts';
import type { StudentInference } from './student-inference.ts';
import { studentInference } from './student-inference.ts';

/** A t test of two means; `difference` is first mean - second mean. */
export interface TwoSampleInference extends StudentInference {
  readonly difference: number;
}

/**
 * Test of the difference of two means.
 *
 * @param samples - first, second: two values each at least; variances: "unequal" (Welch, unless given) or "equal" (pooled);
 *   reference: difference tested against, 0 unless given; confidence: 0.95 unless given
 * @returns difference of the means, statistic, degrees of freedom, p value (two-sided), limits of the difference
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (no spread in either)
 * @source B. L. Welch (1947), Biometrika 34, 28-35, degrees of freedom by Satterthwaite; Student (1908) for the pooled form
 * @validity independent values, each sample from one normal law
 */
export function twoSampleStudent(samples: {
  readonly first: readonly number[];
  readonly second: readonly number[];
  readonly variances?: 'unequal' | 'equal';
  readonly reference?: number;
  readonly confidence?: number;
}): TwoSampleInference {
  const { variances = 'unequal', reference = 0, confidence = 0.95 } = samples;
  const [first, second] = [sampleSummary({ values: samples.first }), sampleSummary({ values: samples.second })];
  const difference = first.mean - second.mean;
  const own = { meanSquares: [first.variance, second.variance], degreesOfFreedom: [first.count - 1, second.count - 1] };
  const inverse = [1 / first.count, 1 / second.count];
  const pooledDf = first.count + second.count - 2;
  const squared =
    variances === 'unequal'
      ? satterthwaite({ ...own, coefficients: inverse })
      : {
          estimate:
            ((inverse[0]! + inverse[1]!) *
              (first.variance * (first.count - 1) + second.variance * (second.count - 1))) /
            pooledDf,
          degreesOfFreedom: pooledDf,
        };
  const inference = studentInference({
    ...{ estimate: difference, standardError: Math.sqrt(squared.estimate) },
    ...{ degreesOfFreedom: squared.degreesOfFreedom, reference, confidence },
  });
  return { difference, ...inference };
}
