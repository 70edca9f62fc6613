import { valueAt } from './value-at.ts';

/**
 * The number written at a path, as a number or as the mean of a spread; used to compare values that may be wrong otherwise.
 *
 * @param raw - anything
 * @param path - keys and indices
 * @returns a finite number in the unit of its key, or undefined
 */
export function meanAt(raw: unknown, path: readonly PropertyKey[]): InUnitOfKey | undefined {
  const value = valueAt(raw, path);
  const number = typeof value === 'object' ? valueAt(value, ['mean']) : value;
  return typeof number === 'number' && Number.isFinite(number) ? number : undefined;
}

/** A number in the unit of the key it stands under. */
type InUnitOfKey = number;
