import type { DrawnLetter } from './opening.ts';

/** A letter of an open equation in the drawing: where it stands, and the dimension it names. mm of the drawing. */
export interface PlacedLetter {
  readonly letter: DrawnLetter;
  readonly at: { readonly x_mm: number; readonly y_mm: number };
  /** Ends at its place instead of starting there. */
  readonly isBefore?: true;
  /** Dimension line; left out where the letter names a thing and not a length. */
  readonly line?: { readonly x1_mm: number; readonly y1_mm: number; readonly x2_mm: number; readonly y2_mm: number };
}

type Place = Omit<PlacedLetter, 'letter'>;

/** A letter beside an upright dimension. @returns its place */
export function uprightLetter(of: {
  readonly x_mm: number;
  readonly from_mm: number;
  readonly to_mm: number;
  /** Height of the letter between the ends, 0 at `from`; left out: half way. */
  readonly share?: number;
  /** The letter stands left of the line; left out: right of it. */
  readonly isBefore?: true;
}): Place {
  const { x_mm, from_mm, to_mm, share = 0.5, isBefore } = of;
  return {
    at: { x_mm: x_mm + (isBefore ? -0.15 : 0.25), y_mm: from_mm + share * (to_mm - from_mm) },
    line: { x1_mm: x_mm, y1_mm: from_mm, x2_mm: x_mm, y2_mm: to_mm },
    ...(isBefore ? { isBefore } : {}),
  };
}

/** A letter above a level dimension. @returns its place */
export function levelLetter(of: { readonly y_mm: number; readonly from_mm: number; readonly to_mm: number }): Place {
  const { y_mm, from_mm, to_mm } = of;
  return {
    at: { x_mm: (from_mm + to_mm) / 2 - 0.25, y_mm: y_mm - 0.6 },
    line: { x1_mm: from_mm, y1_mm: y_mm, x2_mm: to_mm, y2_mm: y_mm },
  };
}
