import { densityAtPressure_g_per_mL, pressureAtDensity_MPa } from '#materials';
import { depthOnSpring_mm } from './depth-on-spring.ts';
import type { DiscRun } from './disc-run.ts';

/** What the pins did, station by station; made once and written over by every run. */
export interface TampColumns {
  readonly regimes: Uint8Array;
  readonly reached_mm: Float64Array;
  readonly forces_N: Float64Array;
  /** Mass under the pin, captured powder included, before the refill. */
  readonly pressed_mg: Float64Array;
  /** Mass when the station is left. */
  readonly masses_mg: Float64Array;
}

/** A code that is only compared: no unit. */
type RegimeCode = number;

/** Codes in `TampColumns.regimes`. */
export const FLUSH: RegimeCode = 0;
export const ON_STOP: RegimeCode = 1;
export const ON_SPRING: RegimeCode = 2;
export const LIMITED: RegimeCode = 3;

/**
 * Fills one bore station by station. Each pin goes down to its stop unless the powder pushes its spring back first;
 * what the pin leaves free above the slug is refilled from the bed. `tampStations` is the readable face of it.
 *
 * M = m_(k-1) + c_k; x = p_k if A P(M/(A(H-p_k))) <= F0, else A P(M/(A(H-x))) = F0 + k_s (p_k - x); where even x = 0
 * is too much for the spring, x = 0 and the capture is cut (limited); m_k = M + f rho0 A x.
 *
 * @param run - bore, pins, powder and springs
 * @param out - columns at least as long as there are pins; every element is overwritten
 * @returns nothing
 * @throws nothing: the caller has checked the ranges
 * @source this project's station model on the geometric stepwise-fill model of tamping discs and the compression law of
 *   the bed; no published worked example of the force-limited case was found
 * @validity pins above the disc's base (depth < height); one refill factor for all stations
 */
export function tamp(run: DiscRun, out: TampColumns): void {
  const { boreArea_mm2, discHeight_mm, depths_mm, feedDensity_g_per_mL, law, preload_N, rate_N_per_mm } = run;
  const stationCount = depths_mm.length;
  let mass_mg = feedDensity_g_per_mL * boreArea_mm2 * discHeight_mm;
  for (let k = 0; k < stationCount; k++) {
    const set_mm = depths_mm[k]!;
    let regime = FLUSH;
    let reached_mm = 0;
    let force_N = 0;
    if (set_mm > 0) {
      const total_mg = mass_mg + run.captured_mg;
      const perArea = total_mg / boreArea_mm2;
      const atStop_N = boreArea_mm2 * pressureAtDensity_MPa(law, perArea / (discHeight_mm - set_mm));
      const greatest_N = preload_N + rate_N_per_mm * set_mm;
      if (atStop_N <= preload_N) {
        regime = ON_STOP;
        reached_mm = set_mm;
        force_N = atStop_N;
        mass_mg = total_mg;
      } else if (boreArea_mm2 * pressureAtDensity_MPa(law, perArea / discHeight_mm) >= greatest_N) {
        // The bed is too dense for the spring before the pin enters: no pin packs more than its spring can press.
        regime = LIMITED;
        force_N = greatest_N;
        const most_mg = densityAtPressure_g_per_mL(law, greatest_N / boreArea_mm2) * boreArea_mm2 * discHeight_mm;
        mass_mg = Math.max(mass_mg, Math.min(total_mg, most_mg));
      } else {
        regime = ON_SPRING;
        reached_mm = depthOnSpring_mm(run, { total_mg, set_mm });
        force_N = preload_N + rate_N_per_mm * (set_mm - reached_mm);
        mass_mg = total_mg;
      }
    }
    out.regimes[k] = regime;
    out.reached_mm[k] = reached_mm;
    out.forces_N[k] = force_N;
    out.pressed_mg[k] = mass_mg;
    if (k < stationCount - 1 || run.isRefilledAfterLastPin)
      mass_mg += run.refill_ratio * feedDensity_g_per_mL * boreArea_mm2 * reached_mm;
    out.masses_mg[k] = mass_mg;
  }
}

/**
 * Empty columns for a number of stations.
 *
 * @param stationCount - pins of the filler
 * @returns columns of that length
 * @throws nothing
 * @source none: bookkeeping
 */
export function tampColumns(stationCount: number): TampColumns {
  return {
    regimes: new Uint8Array(stationCount),
    reached_mm: new Float64Array(stationCount),
    forces_N: new Float64Array(stationCount),
    pressed_mg: new Float64Array(stationCount),
    masses_mg: new Float64Array(stationCount),
  };
}
