/** Left land of the disc before the first bore. */
const LAND_mm = 1;
/** Outside of the disc that is seen right of each axis: room for the scale. */
const OUTSIDE_mm = 2.9;
/** Metal that is cut between the outside face and the next bore. */
export const CUT_mm = 0.5;

/** Where the half section of one station lies, mm from the left end of the base plate. */
export interface StationPlace {
  readonly bore_mm: number;
  readonly axis_mm: number;
  /** Where the next bore begins. */
  readonly end_mm: number;
}

/**
 * Half sections side by side: left of the axis powder and pin, right of it the disc's outside with the scale.
 *
 * @param disc - number of stations, bore of the disc
 * @returns one place per station, and the width of all
 */
export function stationLayout(disc: { readonly stationCount: number; readonly bore_mm: number }): {
  readonly places: readonly StationPlace[];
  readonly width_mm: number;
} {
  const pitch_mm = disc.bore_mm / 2 + OUTSIDE_mm;
  const places = Array.from({ length: disc.stationCount }, (_, i): StationPlace => {
    const bore_mm = LAND_mm + i * pitch_mm;
    return { bore_mm, axis_mm: bore_mm + disc.bore_mm / 2, end_mm: bore_mm + pitch_mm };
  });
  return { places, width_mm: LAND_mm + disc.stationCount * pitch_mm };
}
