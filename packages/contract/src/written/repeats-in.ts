/** A name that was used before: where now, and where first. */
export interface Repeat {
  readonly name: string;
  readonly index: number;
  readonly firstIndex: number;
}

/**
 * Names that are used more than once.
 *
 * @param names - names in the order of the document; undefined where there is none
 * @returns each later use
 */
export function repeatsIn(names: readonly (string | undefined)[]): readonly Repeat[] {
  return names.flatMap((name, index) => {
    const firstIndex = names.indexOf(name);
    return name === undefined || firstIndex === index ? [] : [{ name, index, firstIndex }];
  });
}
