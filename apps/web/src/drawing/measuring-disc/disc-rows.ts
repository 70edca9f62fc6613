import { discHeight_mm, type DiscPart } from '@fillwright/engine/fillers';

/** Height of a row of the list of discs: a target that a pointer finds, and the same scale as the drawing. */
export const ROW_mm = 1.22;

export interface DiscRow {
  readonly disc: DiscPart;
  readonly height_mm: number;
  /** Middle of the row above the base line. */
  readonly at_mm: number;
}

/**
 * The discs in stock as rows beside the drawing, highest on top, spread around the faces they would bring.
 *
 * @param discs - in any order
 * @returns one row per disc, from the top
 */
export function discRows(discs: readonly DiscPart[]): readonly DiscRow[] {
  const sorted = [...discs].sort((a, b) => discHeight_mm(b) - discHeight_mm(a));
  const heights = sorted.map(discHeight_mm);
  const middle_mm = ((heights[0] ?? 0) + (heights.at(-1) ?? 0)) / 2;
  const top_mm = middle_mm + ((sorted.length - 1) / 2) * ROW_mm;
  return sorted.map((disc, i) => ({ disc, height_mm: discHeight_mm(disc), at_mm: top_mm - i * ROW_mm }));
}
