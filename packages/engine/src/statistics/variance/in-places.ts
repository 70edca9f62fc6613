/**
 * Items with the same number together, by rising number.
 *
 * @param items - in any order
 * @param placeCountOf - the number of an item
 * @returns groups of items
 * @throws nothing
 * @source none: bookkeeping
 */
export function inPlaces<T>(items: readonly T[], placeCountOf: (item: T) => number): T[][] {
  const groups = new Map<number, T[]>();
  for (const item of items) {
    const group = groups.get(placeCountOf(item)) ?? [];
    groups.set(placeCountOf(item), [...group, item]);
  }
  return [...groups].sort(([a], [b]) => a - b).map(([, group]) => group);
}
