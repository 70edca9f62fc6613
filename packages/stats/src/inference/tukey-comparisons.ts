import { studentizedRangeQuantile, studentizedRangeSurvival } from '#distributions';
import { requireWithin, StatsError } from '#elementary';
import { sampleSummary } from './sample-summary.ts';

/** One pair of groups, by their places from 0: mean of `second` - mean of `first`. */
export interface TukeyComparison {
  readonly first: number;
  readonly second: number;
  readonly difference: number;
  readonly low: number;
  readonly high: number;
  readonly pValue: number;
}

/**
 * All differences between group means with one confidence for all of them together.
 *
 * @param sample - groups: 2 to 100 of two values each at least; confidence: above 0 and below 1, 0.95 unless given
 * @returns pairs in the order 2-1, 3-1, ..., 3-2, ...: difference, simultaneous limits, adjusted p value
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (no spread inside any group)
 * @source J. W. Tukey (1953); C. Y. Kramer (1956), Biometrics 12, 307-310 for groups of unequal size
 * @validity normal values of equal variance; exact for groups of one size, above the confidence for others
 */
export function tukeyComparisons(sample: {
  readonly groups: readonly (readonly number[])[];
  readonly confidence?: number;
}): readonly TukeyComparison[] {
  const { groups, confidence = 0.95 } = sample;
  const groupCount = groups.length;
  if (groupCount < 2 || groupCount > 100) throw new StatsError('sample-size', { groupCount, min: 2, max: 100 });
  requireWithin({ confidence }, { above: 0, below: 1 });
  const summaries = groups.map((values) => sampleSummary({ values }));
  const degreesOfFreedom = summaries.reduce((sum, { count }) => sum + count - 1, 0);
  const within = summaries.reduce((sum, { count, variance }) => sum + (count - 1) * variance, 0) / degreesOfFreedom;
  requireWithin({ within }, { above: 0 });
  const law = { groupCount, degreesOfFreedom };
  const critical = studentizedRangeQuantile({ p: 1 - confidence, ...law, tail: 'upper' });
  const compare = (first: number, second: number): TukeyComparison => {
    const [one, other] = [summaries[first]!, summaries[second]!];
    const difference = other.mean - one.mean;
    const error = Math.sqrt(0.5 * within * (1 / one.count + 1 / other.count));
    const pValue = studentizedRangeSurvival({ x: Math.abs(difference) / error, ...law });
    const reach = critical * error;
    return { first, second, difference, low: difference - reach, high: difference + reach, pValue };
  };
  return groups.flatMap((_, first) => groups.slice(first + 1).map((_group, i) => compare(first, first + 1 + i)));
}
