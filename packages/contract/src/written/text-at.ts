import { valueAt } from './value-at.ts';

/**
 * The text at a path of a document of unknown form.
 *
 * @param raw - anything
 * @param path - keys and indices
 * @returns the text, or undefined when something else stands there
 */
export function textAt(raw: unknown, path: readonly PropertyKey[]): string | undefined {
  const value = valueAt(raw, path);
  return typeof value === 'string' ? value : undefined;
}
