/** Metal that is drawn left and right of each bore, real mm. */
const LAND_mm = 1.6;

/** Where the bores of a section lie, real mm from its left end. */
export interface DiscPlaces {
  readonly lefts_mm: readonly number[];
  readonly width_mm: number;
}

/**
 * Whole bores side by side with metal between them.
 *
 * @param disc - number of stations, bore
 * @returns left edges and the width of all, real mm
 */
export function discPlaces({
  stationCount,
  bore_mm,
}: {
  readonly stationCount: number;
  readonly bore_mm: number;
}): DiscPlaces {
  const pitch_mm = bore_mm + LAND_mm;
  return {
    lefts_mm: Array.from({ length: stationCount }, (_, i) => LAND_mm + i * pitch_mm),
    width_mm: LAND_mm + stationCount * pitch_mm,
  };
}
