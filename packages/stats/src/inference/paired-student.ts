import { StatsError } from '#elementary';
import type { OneSampleInference } from './one-sample-student.ts';
import { oneSampleStudent } from './one-sample-student.ts';

/**
 * Test of the mean difference of pairs.
 *
 * @param pairs - first, second: as many values, two at least, pair by pair; reference: 0 unless given; confidence: 0.95 unless given
 * @returns as `oneSampleStudent`, of first - second
 * @throws StatsError "wrong-length", "sample-size", "not-finite", "out-of-range" (all differences equal)
 * @source Student (1908), Biometrika 6, 1-25
 * @validity independent differences from one normal law
 */
export function pairedStudent(pairs: {
  readonly first: readonly number[];
  readonly second: readonly number[];
  readonly reference?: number;
  readonly confidence?: number;
}): OneSampleInference {
  const { first, second, reference = 0, confidence = 0.95 } = pairs;
  if (first.length !== second.length)
    throw new StatsError('wrong-length', { first: first.length, second: second.length });
  return oneSampleStudent({ values: first.map((value, i) => value - second[i]!), reference, confidence });
}
