import { requireWithin, StatsError } from '#elementary';
import { carriedSum } from './carried-sum.ts';
import { centred, squares } from './cell-of.ts';

/** How well a cause explains values: never a probability. */
export interface RankedCause {
  /** Place of the cause in the list given, from 0. */
  readonly cause: number;
  /** About the best common level once the cause is taken off. */
  readonly residualSumOfSquares: number;
  /** 1: explains all that differs; 0: nothing; negative: values differ more once it is taken off. */
  readonly explained: number;
}

/**
 * Causes by how well the pattern that each expects explains values that differ, the common level free.
 *
 * @param sample - values: two at least; causes: for each one the deviation expected at every value, in the unit of the data
 * @returns causes, the best first, ties in the order given; the sum of squares with no cause
 * @throws StatsError "sample-size", "not-finite", "wrong-length", "out-of-range" (all values equal)
 * @source least squares with nothing but the level fitted
 * @validity ranks only the causes given: the best may still be wrong; the size of a cause is taken as given, not fitted
 */
export function rankedCauses(sample: {
  readonly values: readonly number[];
  readonly causes: readonly (readonly number[])[];
}): { readonly withoutCause: number; readonly causes: readonly RankedCause[] } {
  const { values, causes } = sample;
  const count = values.length;
  if (count < 2 || causes.length === 0) throw new StatsError('sample-size', { count, causeCount: causes.length });
  const about = (rest: readonly number[]): number => {
    const mean = carriedSum(rest) / count;
    return squares(rest.map((value) => value - mean));
  };
  const shifted = centred([values]).groups[0]!;
  const withoutCause = about(shifted);
  requireWithin({ withoutCause }, { above: 0 });
  const ranked = causes.map((pattern, cause) => {
    if (pattern.length !== count) throw new StatsError('wrong-length', { cause, length: pattern.length, count });
    for (const expected of pattern) requireWithin({ expected });
    const residualSumOfSquares = about(shifted.map((value, i) => value - pattern[i]!));
    return { cause, residualSumOfSquares, explained: 1 - residualSumOfSquares / withoutCause };
  });
  return { withoutCause, causes: ranked.sort((a, b) => a.residualSumOfSquares - b.residualSumOfSquares) };
}
