/**
 * Leaves out what is not given.
 *
 * @param values - some of which may be undefined
 * @returns the others
 */
export function givenOnly<T extends object>(values: T): { [key in keyof T]?: Exclude<T[key], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [key in keyof T]?: Exclude<T[key], undefined>;
  };
}
