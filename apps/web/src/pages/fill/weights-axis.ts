/** What has to be seen on the axis of the first weights, mg net. */
export interface SeenWeights {
  readonly mean_mg: number;
  readonly unit_mg: number;
  readonly low_mg: number;
  readonly high_mg: number;
  readonly singleLow_mg: number;
  readonly singleHigh_mg: number;
}

export interface WeightsAxis {
  readonly from_mg: number;
  readonly to_mg: number;
  /** Place of a mass along the axis, 0 to 1; outside of them beyond its ends. */
  readonly at_frac: (mass_mg: number) => number;
}

/** The outlines of the heap reach so many standard deviations beyond the ends of the forecast. */
const TAIL_sd = 2.6;
/** Ends of the axis lie on such marks, so that it does not tremble while a lever moves. */
const GRID_mg = 10;

/**
 * The axis of the first weights: heap, its outlines and all limits on one scale.
 *
 * @param seen - what has to be seen
 * @returns ends and places
 */
export function weightsAxis(seen: SeenWeights): WeightsAxis {
  const tail_mg = TAIL_sd * seen.unit_mg;
  const low_mg = Math.min(seen.low_mg - tail_mg, seen.mean_mg - tail_mg, seen.singleLow_mg - GRID_mg);
  const high_mg = Math.max(seen.high_mg + tail_mg, seen.mean_mg + tail_mg, seen.singleHigh_mg + GRID_mg);
  const from_mg = Math.floor(low_mg / GRID_mg) * GRID_mg;
  const to_mg = Math.ceil(high_mg / GRID_mg) * GRID_mg;
  return { from_mg, to_mg, at_frac: (mass_mg) => (mass_mg - from_mg) / (to_mg - from_mg) };
}
