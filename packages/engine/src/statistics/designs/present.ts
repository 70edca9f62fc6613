/**
 * The values that are there: a key whose value is undefined is left away.
 *
 * @param values - by key
 * @returns a copy without undefined values
 * @throws nothing
 * @source none: bookkeeping
 */
export function present<T extends object>(values: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}
