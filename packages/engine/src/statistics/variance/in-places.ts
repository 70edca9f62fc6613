/**
 * Items with the same number together, by rising number.
 *
 * @param items - in any order
 * @param placeCount - the number of an item
 * @returns groups of items
 * @throws nothing
 * @source none: bookkeeping
 */
export function inPlaces<T>(items: readonly T[], placeCount: (item: T) => number): T[][] {
  const groups = new Map<number, T[]>();
  for (const item of items) {
    const group = groups.get(placeCount(item)) ?? [];
    groups.set(placeCount(item), [...group, item]);
  }
  return [...groups].sort(([a], [b]) => a - b).map(([, group]) => group);
}
