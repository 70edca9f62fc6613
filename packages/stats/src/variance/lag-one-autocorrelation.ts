import { requireWithin, StatsError } from '#elementary';
import { carriedSum } from './carried-sum.ts';
import { cellOf } from './cell-of.ts';

/**
 * Correlation of each value of a sequence with the one before it.
 *
 * @param sample - values: two at least, in the order of time
 * @returns sum of products of neighbouring deviations over sum of squared deviations
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (all values equal)
 * @source NIST StRD, univariate summary statistics: definition of r(1) (secondary)
 * @validity about the mean of the whole sequence; slightly below the true correlation for short ones
 */
export function lagOneAutocorrelation(sample: { readonly values: readonly number[] }): number {
  const { values } = sample;
  if (values.length < 2) throw new StatsError('sample-size', { count: values.length, min: 2 });
  for (const value of values) requireWithin({ value });
  const rough = carriedSum(values) / values.length;
  const shifted = values.map((value) => value - rough);
  const { mean, sumOfSquares } = cellOf(shifted);
  requireWithin({ sumOfSquares }, { above: 0 });
  const deviations = shifted.map((value) => value - mean);
  return carriedSum(deviations.slice(1).map((deviation, i) => deviation * deviations[i]!)) / sumOfSquares;
}
