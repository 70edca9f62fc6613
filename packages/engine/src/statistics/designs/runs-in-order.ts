/** Rows of coded levels: pure numbers, without a unit. */
type Levels_ratio = readonly (readonly number[])[];

/**
 * Runs as the catalogue gives them.
 *
 * @param rows - coded levels
 * @param order - `standard`: as made; `sorted`: by the level of the first factor, then of the second, and so on
 * @returns one group per run
 * @throws nothing
 * @source none: bookkeeping
 */
export function runsInOrder(
  rows: Levels_ratio,
  order: 'standard' | 'sorted' = 'standard',
): { readonly levels_ratio: readonly number[] }[] {
  const given = order === 'sorted' ? rows.toSorted(byLevel) : rows;
  return given.map((levels_ratio) => ({ levels_ratio }));
}

function byLevel(one: readonly number[], other: readonly number[]): number {
  const place = one.findIndex((level, k) => level !== other[k]);
  return place < 0 ? 0 : one[place]! - other[place]!;
}
