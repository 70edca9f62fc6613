/** Where a value stands: keys and list positions. */
type Path = readonly (string | number)[];

/** @returns the value at a path of a document of unknown form; undefined where the path leads nowhere */
export function valueIn(document: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, step)
        ? (value as Record<string | number, unknown>)[step]
        : undefined,
    document,
  );
}
