import { requireWithin, StatsError } from '#elementary';

export interface Subgroups {
  /** At least two subgroups of at least two values each, in the unit of the data, in time order. */
  readonly subgroups: readonly (readonly number[])[];
}

export interface SubgroupSummary {
  readonly size: number;
  readonly mean: number;
  readonly range: number;
  /** n - 1 form. */
  readonly sd: number;
}

/**
 * Mean, range and standard deviation of every subgroup.
 *
 * @param input - subgroups: two or more of two or more values
 * @returns one summary per subgroup
 * @throws StatsError "sample-size" (too few subgroups or values), "not-finite"
 * @source definitions
 */
export function subgroupSummaries({ subgroups }: Subgroups): readonly SubgroupSummary[] {
  if (subgroups.length < 2) throw new StatsError('sample-size', { subgroupCount: subgroups.length, min: 2 });
  return subgroups.map((values, i) => {
    if (values.length < 2) throw new StatsError('sample-size', { subgroup: i + 1, size: values.length, min: 2 });
    for (const value of values) requireWithin({ value });
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const squares = values.reduce((sum, value) => sum + (value - mean) * (value - mean), 0);
    const range = values.reduce((most, value) => Math.max(most, value), -Infinity) - values.reduce(least, Infinity);
    return { size: values.length, mean, range, sd: Math.sqrt(squares / (values.length - 1)) };
  });
}

function least(low: number, value: number): number {
  return Math.min(low, value);
}
