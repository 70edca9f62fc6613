import { StatsError } from './stats-error.ts';

/** Allowed range; `min` and `max` are allowed themselves, `above` and `below` are not. */
export interface Range {
  readonly min?: number;
  readonly above?: number;
  readonly max?: number;
  readonly below?: number;
}

/**
 * Refuses every named value that is not a finite number inside the range.
 *
 * @param values - the values under the names the caller knows them by
 * @param range - left out: any finite number
 * @returns nothing
 * @throws StatsError "not-finite" (NaN or an infinity), "out-of-range"; its numbers hold the field and the range
 * @source house rule: NaN never turns into a result
 */
export function requireWithin(values: Readonly<Record<string, number>>, range: Range = {}): void {
  for (const name in values) {
    const value = values[name]!;
    if (!Number.isFinite(value)) throw new StatsError('not-finite', { [name]: value, ...range });
    if (!isInside(value, range)) throw new StatsError('out-of-range', { [name]: value, ...range });
  }
}

function isInside(value: number, { min, above, max, below }: Range): boolean {
  if (min !== undefined && value < min) return false;
  if (above !== undefined && value <= above) return false;
  if (max !== undefined && value > max) return false;
  return below === undefined || value < below;
}
