import { requireWithin, StatsError } from '#elementary';
import { carriedSum } from './carried-sum.ts';

/** What the likelihood needs of values that share all their random parts but the last. */
export interface Cell {
  readonly count: number;
  readonly mean: number;
  /** Sum of squares about the mean. */
  readonly sumOfSquares: number;
}

/**
 * Count, mean and sum of squares of values.
 *
 * @param values - one at least
 * @returns the cell
 * @throws nothing
 * @source T. F. Chan, G. H. Golub, R. J. LeVeque (1983), Am. Stat. 37, 242-247 (from memory)
 */
export function cellOf(values: readonly number[]): Cell {
  const count = values.length;
  const mean = carriedSum(values) / count;
  const deviations = values.map((value) => value - mean);
  const rest = carriedSum(deviations) / count;
  return { count, mean: mean + rest, sumOfSquares: squares(deviations.map((deviation) => deviation - rest)) };
}

/**
 * Sum of squares.
 *
 * @param values - finite numbers
 * @returns sum of their squares
 * @throws nothing
 * @source definition
 */
export function squares(values: readonly number[]): number {
  return carriedSum(values.map((value) => value * value));
}

/**
 * Mean of all values and the values less it, so that a large common part costs no digits.
 *
 * @param groups - of one value each at least
 * @returns mean and differences
 * @throws StatsError "sample-size" (an empty group), "not-finite"
 * @source definition
 */
export function centred(groups: readonly (readonly number[])[]): { shift: number; groups: number[][] } {
  for (const [group, values] of groups.entries()) {
    if (values.length === 0) throw new StatsError('sample-size', { group, count: 0, min: 1 });
    for (const value of values) requireWithin({ value });
  }
  const all = groups.flat();
  const shift = carriedSum(all) / all.length;
  return { shift, groups: groups.map((values) => values.map((value) => value - shift)) };
}
