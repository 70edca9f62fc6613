import type { Range } from './require-within.ts';
import { requireWithin } from './require-within.ts';
import { StatsError } from './stats-error.ts';

/**
 * Refuses every named value that is not a whole number inside the range.
 *
 * @param values - the values under the names the caller knows them by
 * @param range - left out: any whole number
 * @returns nothing
 * @throws StatsError "not-finite", "out-of-range", "not-whole"; its numbers hold the field and the range
 * @source house rule: NaN never turns into a result
 */
export function requireWhole(values: Readonly<Record<string, number>>, range: Range = {}): void {
  requireWithin(values, range);
  for (const [name, value] of Object.entries(values)) {
    if (!Number.isInteger(value)) throw new StatsError('not-whole', { [name]: value, ...range });
  }
}
