import { valueAt } from './value-at.ts';

/**
 * The items of a list of unknown form.
 *
 * @param raw - anything
 * @param path - where the list may stand
 * @returns the items; none when there is no list
 */
export function itemsAt(raw: unknown, path: readonly PropertyKey[]): readonly unknown[] {
  const value = valueAt(raw, path);
  return Array.isArray(value) ? value : [];
}
