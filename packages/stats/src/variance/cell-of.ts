import { requireWithin, StatsError } from '#elementary';
import { carriedSum } from './carried-sum.ts';

/** What the likelihood needs of values that share all their random parts but the last. */
export interface Cell {
  readonly count: number;
  readonly mean: number;
  /** Sum of squares about the mean. */
  readonly sumOfSquares: number;
}

export function cellOf(values: readonly number[]): Cell {
  const count = values.length;
  const mean = carriedSum(values) / count;
  const deviations = values.map((value) => value - mean);
  const rest = carriedSum(deviations) / count;
  return { count, mean: mean + rest, sumOfSquares: squares(deviations.map((deviation) => deviation - rest)) };
}

export function squares(values: readonly number[]): number {
  return carriedSum(values.map((value) => value * value));
}

/** Mean of all values and the values less it, so that a large common part costs no digits. */
export function centred(groups: readonly (readonly number[])[]): { shift: number; groups: number[][] } {
  for (const [group, values] of groups.entries()) {
    if (values.length === 0) throw new StatsError('sample-size', { group, count: 0, min: 1 });
    for (const value of values) requireWithin({ value });
  }
  const all = groups.flat();
  const shift = carriedSum(all) / all.length;
  return { shift, groups: groups.map((values) => values.map((value) => value - shift)) };
}
