/** Items with the same number together, by rising number. */
export function inPlaces<T>(items: readonly T[], numberOf: (item: T) => number): T[][] {
  const groups = new Map<number, T[]>();
  for (const item of items) {
    const group = groups.get(numberOf(item)) ?? [];
    groups.set(numberOf(item), [...group, item]);
  }
  return [...groups].sort(([a], [b]) => a - b).map(([, group]) => group);
}
