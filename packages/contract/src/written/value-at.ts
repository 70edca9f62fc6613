/**
 * The value at a path of a document of unknown form.
 *
 * @param raw - anything
 * @param path - keys and indices
 * @returns the value, or undefined where the path leads nowhere
 */
export function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, key)
        ? (value as Record<PropertyKey, unknown>)[key]
        : undefined,
    raw,
  );
}
