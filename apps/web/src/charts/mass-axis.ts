/** A mass axis that stands upright: pixels from its top. */
export interface MassAxis {
  readonly low_mg: number;
  readonly high_mg: number;
  readonly y: (mass_mg: number) => number;
  /** Round masses that divide it. */
  readonly ticks_mg: readonly number[];
}

interface Span {
  readonly low_mg: number;
  readonly high_mg: number;
  readonly top_px: number;
  readonly bottom_px: number;
}

/** Closer ticks than this cannot be read. */
const LEAST_GAP_px = 34;

/**
 * An upright axis over a span of masses.
 *
 * @param span - masses and pixels
 * @returns the axis
 */
export function massAxis({ low_mg, high_mg, top_px, bottom_px }: Span): MassAxis {
  const reach_mg = Math.max(high_mg - low_mg, Number.MIN_VALUE);
  const y = (mass_mg: number): number => bottom_px - ((mass_mg - low_mg) / reach_mg) * (bottom_px - top_px);
  const step_mg = roundStep((reach_mg * LEAST_GAP_px) / Math.max(1, bottom_px - top_px));
  const first = Math.ceil(low_mg / step_mg);
  const count = Math.max(0, Math.floor(high_mg / step_mg) - first + 1);
  const ticks_mg = Array.from({ length: count }, (_, i) => (first + i) * step_mg);
  return { low_mg, high_mg, y, ticks_mg };
}

/** The next of 1, 2, 5, 10, 20 ... */
function roundStep(least_mg: number): number {
  const decade = Number(`1e${Math.floor(Math.log10(least_mg))}`);
  return decade * ([1, 2, 5, 10].find((step) => step * decade >= least_mg * (1 - 1e-9)) ?? 10);
}
