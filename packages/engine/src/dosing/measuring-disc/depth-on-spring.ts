import { pressureAtDensity_MPa } from '#materials';
import type { DiscRun } from './disc-run.ts';

/** Bed and spring within this are in balance: the depth is then right to about 1e-12 mm. */
const BALANCE_N = 1e-10;
/** About ten are enough; where the bed is infinitely strong at the stop a few more. */
const MOST_STEPS = 200;

/**
 * Depth at which the bed pushes a pin as hard as its spring: A P(M/(A(H-x))) = F0 + k_s (p - x). Regula falsi; an end
 * that stays where it is counts half (Illinois).
 *
 * @param run - bore, powder and spring
 * @param pin - total_mg under the pin; set_mm: depth at its stop, where the bed is the stronger; at 0 the spring is
 * @returns mm, between 0 and set_mm; NaN where the law gives NaN
 * @throws nothing
 * @source balance of forces; M. Dowell, P. Jarratt (1971), BIT 11, 168-174
 */
export function depthOnSpring_mm(run: DiscRun, pin: { readonly total_mg: number; readonly set_mm: number }): number {
  const { boreArea_mm2, discHeight_mm, law, preload_N, rate_N_per_mm } = run;
  const { set_mm } = pin;
  const perArea = pin.total_mg / boreArea_mm2;
  let low_mm = 0;
  let high_mm = set_mm;
  let low_N = boreArea_mm2 * pressureAtDensity_MPa(law, perArea / discHeight_mm) - preload_N - rate_N_per_mm * set_mm;
  let high_N = boreArea_mm2 * pressureAtDensity_MPa(law, perArea / (discHeight_mm - set_mm)) - preload_N;
  let moved: 'low' | 'high' | undefined;
  for (let step = 0; step < MOST_STEPS; step++) {
    const secant_mm = (low_mm * high_N - high_mm * low_N) / (high_N - low_N);
    const depth_mm = secant_mm > low_mm && secant_mm < high_mm ? secant_mm : 0.5 * (low_mm + high_mm);
    const bed_N = boreArea_mm2 * pressureAtDensity_MPa(law, perArea / (discHeight_mm - depth_mm));
    const excess_N = bed_N - preload_N - rate_N_per_mm * (set_mm - depth_mm);
    if (Math.abs(excess_N) < BALANCE_N) return depth_mm;
    if (excess_N > 0) {
      if (moved === 'high') low_N *= 0.5;
      high_mm = depth_mm;
      high_N = excess_N;
      moved = 'high';
    } else if (excess_N < 0) {
      if (moved === 'low') high_N *= 0.5;
      low_mm = depth_mm;
      low_N = excess_N;
      moved = 'low';
    } else return NaN;
  }
  return 0.5 * (low_mm + high_mm);
}
