import { DomainError } from './domain-error.ts';

/** Allowed range in the unit of the values; `min` and `max` are allowed themselves, `above` and `below` are not. */
interface RangeOfValues {
  readonly min?: InUnitOfKey;
  readonly above?: InUnitOfKey;
  readonly max?: InUnitOfKey;
  readonly below?: InUnitOfKey;
}

/** A number in the unit of the key it stands under. */
type InUnitOfKey = number;

/**
 * Refuses every named value that is not a finite number inside the range.
 *
 * @param values - the values under the names the caller knows them by
 * @param range - the range all of them must lie in
 * @returns nothing
 * @throws DomainError "not-a-number" (NaN or an infinity), "not-positive" (0 or less where only `above: 0` is broken),
 *   "out-of-range"; its facts hold the field and the range
 * @source house rule: NaN never turns into a result
 */
export function requireWithin(values: Readonly<Record<string, number>>, range: RangeOfValues): void {
  for (const [name, value] of Object.entries(values)) {
    if (!Number.isFinite(value)) throw new DomainError('not-a-number', { [name]: value, ...range });
    if (range.above === 0 && value <= 0) throw new DomainError('not-positive', { [name]: value, ...range });
    if (!isInside(value, range)) throw new DomainError('out-of-range', { [name]: value, ...range });
  }
}

function isInside(value: number, { min, above, max, below }: RangeOfValues): boolean {
  if (min !== undefined && value < min) return false;
  if (above !== undefined && value <= above) return false;
  if (max !== undefined && value > max) return false;
  return below === undefined || value < below;
}
