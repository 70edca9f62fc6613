import { requireWithin } from '#catalogue';

/** Constants of a tapping curve, and how many taps. */
export interface Tapping {
  readonly a_frac: number;
  readonly b_per_tap: number;
  readonly tapCount: number;
}

/**
 * Kawakita's law for tapping: share of the poured volume lost after n taps.
 *
 * C = (V_0 - V_n) / V_0 = a b n / (1 + b n)
 *
 * @param tapping - a_frac: greatest reduction, 0 < a < 1; b_per_tap: > 0, 1/b is the "cohesiveness" in taps;
 *   tapCount: >= 0
 * @returns reduction, share of the poured volume, from 0 to below a
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source Kawakita & Luedde, Powder Technology 4 (1971) 61 (from memory)
 * @validity a and b belong to one poured state and one way of tapping; a is near CI/100 where the volume at the start is
 *   the poured one. Vibration of cohesive powder: cycles for taps
 * @example kawakitaTapping_frac({ a_frac: 0.5, b_per_tap: 0.25, tapCount: 12 }) // 0.375
 */
export function kawakitaTapping_frac({ a_frac, b_per_tap, tapCount }: Tapping): number {
  requireWithin({ a_frac }, { above: 0, below: 1 });
  requireWithin({ b_per_tap }, { above: 0 });
  requireWithin({ tapCount }, { min: 0 });
  return (a_frac * b_per_tap * tapCount) / (1 + b_per_tap * tapCount);
}
