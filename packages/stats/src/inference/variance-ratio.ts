import { fisherCdf, fisherQuantile, fisherSurvival } from '#distributions';
import { requireWithin } from '#elementary';
import { sampleSummary } from './sample-summary.ts';

/** An F test of two variances and the limits of their ratio. */
export interface VarianceRatio {
  readonly ratio: number;
  readonly numeratorDf: number;
  readonly denominatorDf: number;
  readonly pValue: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Test of the ratio of two variances against 1.
 *
 * @param samples - first, second: two values each at least, neither all equal; confidence: 0.95 unless given
 * @returns first variance / second variance, degrees of freedom, p value (two-sided), limits of the ratio
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (a variance of 0)
 * @source G. W. Snedecor, W. G. Cochran, Statistical Methods (from memory); R 4.2.2 var.test does the same
 * @validity independent values, each sample from one normal law; sensitive to heavy tails
 */
export function varianceRatio(samples: {
  readonly first: readonly number[];
  readonly second: readonly number[];
  readonly confidence?: number;
}): VarianceRatio {
  const { confidence = 0.95 } = samples;
  requireWithin({ confidence }, { above: 0, below: 1 });
  const [first, second] = [sampleSummary({ values: samples.first }), sampleSummary({ values: samples.second })];
  requireWithin({ firstVariance: first.variance, secondVariance: second.variance }, { above: 0 });
  const law = { numeratorDf: first.count - 1, denominatorDf: second.count - 1 };
  const ratio = first.variance / second.variance;
  const p = 0.5 * (1 - confidence);
  return {
    ratio,
    ...law,
    pValue: Math.min(1, 2 * Math.min(fisherCdf({ x: ratio, ...law }), fisherSurvival({ x: ratio, ...law }))),
    low: ratio / fisherQuantile({ p, ...law, tail: 'upper' }),
    high: ratio / fisherQuantile({ p, ...law }),
  };
}
