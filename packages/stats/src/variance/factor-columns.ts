import { requireWithin, StatsError } from '#elementary';

/** A factor as it is given: for every value the level that it belongs to. */
export interface GivenFactor {
  readonly name: string;
  /** Whole numbers or names, one for each value. */
  readonly levels: readonly (number | string)[];
}

/** A factor by level. */
export interface FactorColumns {
  readonly name: string;
  /** Each level once, in rising order. */
  readonly levels: readonly (number | string)[];
  /** For each value the place of its level in `levels`. */
  readonly at: Int32Array;
  readonly counts: readonly number[];
}

/**
 * Levels of a factor, each with its values.
 *
 * @param factor - name and level of each value
 * @param count - number of values
 * @returns the factor by level
 * @throws StatsError "wrong-length" (not one level for each value), "not-finite"
 * @source none: bookkeeping
 */
export function factorColumns({ name, levels }: GivenFactor, count: number): FactorColumns {
  if (levels.length !== count) throw new StatsError('wrong-length', { levelCount: levels.length, count });
  for (const level of levels) if (typeof level === 'number') requireWithin({ level });
  const order = [...new Set(levels)].sort((a, b) => (a < b ? -1 : 1));
  const place = new Map(order.map((level, i) => [level, i]));
  const at = Int32Array.from(levels, (level) => place.get(level)!);
  const counts = order.map(() => 0);
  for (const i of at) counts[i]! += 1;
  return { name, levels: order, at, counts };
}
