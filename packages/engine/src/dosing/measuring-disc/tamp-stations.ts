import { densityAtPressure_g_per_mL, pressureAtDensity_MPa, type CompressionLaw } from '#materials';
import type { StationTrace } from '../dosing.ts';
import { pinKey } from './keys.ts';

/** One bore of the disc with the pins above it. Densities in g/mL are mg/mm3. */
export interface DiscRun {
  readonly boreArea_mm2: number;
  readonly discHeight_mm: number;
  /** Depth of each pin at its stop, below the disc's top face, first station first; 0 is flush. */
  readonly depths_mm: readonly number[];
  readonly feedDensity_g_per_mL: number;
  /** One factor for the refill of every station. */
  readonly refill_ratio: number;
  /** Powder that a pin drags in on its way down, per tamp. */
  readonly captured_mg: number;
  readonly law: CompressionLaw;
  readonly preload_N: number;
  readonly rate_N_per_mm: number;
  readonly isRefilledAfterLastPin: boolean;
}

/** What one pin does to the powder below it. */
interface Tamp {
  readonly reached_mm: number;
  readonly regime: StationTrace['regime'];
  readonly force_N: number;
  /** Mass under the pin, captured powder included. */
  readonly mass_mg: number;
}

/** Halvings of the depth between 0 and the stop: below 1e-15 of it. */
const HALVINGS = 52;

/**
 * Fills one bore station by station. Each pin goes down to its stop unless the powder pushes its spring back first;
 * what the pin leaves free above the slug is refilled from the bed.
 *
 * M = m_(k-1) + c_k; x = p_k if A P(M/(A(H-p_k))) <= F0, else A P(M/(A(H-x))) = F0 + k_s (p_k - x); where even x = 0
 * is too much for the spring, x = 0 and the capture is cut (station "limited"); m_k = M + f rho0 A x.
 *
 * @param run - bore, pins, powder and springs
 * @returns one trace per station; the dose is the mass of the last
 * @throws nothing: the caller has checked the ranges
 * @source this project's station model on the geometric stepwise-fill model of tamping discs and the compression law of
 *   the bed; no published worked example of the force-limited case was found
 * @validity pins above the disc's base (depth < height); refill factor the same at all stations
 */
export function tampStations(run: DiscRun): readonly StationTrace[] {
  const { boreArea_mm2, discHeight_mm, depths_mm, feedDensity_g_per_mL, refill_ratio } = run;
  const stations: StationTrace[] = [];
  let mass_mg = feedDensity_g_per_mL * boreArea_mm2 * discHeight_mm;
  for (let k = 0; k < depths_mm.length; k++) {
    const set_mm = depths_mm[k] ?? 0;
    const before_mg = mass_mg;
    const tamp = set_mm > 0 ? tampOnce(run, { set_mm, before_mg }) : flush(before_mg);
    const isRefilled = k < depths_mm.length - 1 || run.isRefilledAfterLastPin;
    const refill_mg = isRefilled ? refill_ratio * feedDensity_g_per_mL * boreArea_mm2 * tamp.reached_mm : 0;
    mass_mg = tamp.mass_mg + refill_mg;
    stations.push({
      station: k + 1,
      adjuster: pinKey(k + 1),
      set_mm,
      reached_mm: tamp.reached_mm,
      regime: tamp.regime,
      ...(set_mm > 0 ? { force_N: tamp.force_N, pressure_MPa: tamp.force_N / boreArea_mm2 } : {}),
      density_g_per_mL: tamp.mass_mg / (boreArea_mm2 * (discHeight_mm - tamp.reached_mm)),
      captured_mg: tamp.mass_mg - before_mg,
      mass_mg,
    });
  }
  return stations;
}

function flush(before_mg: number): Tamp {
  return { reached_mm: 0, regime: 'flush', force_N: 0, mass_mg: before_mg };
}

function tampOnce(run: DiscRun, pin: { readonly set_mm: number; readonly before_mg: number }): Tamp {
  const { boreArea_mm2, discHeight_mm, law, preload_N, rate_N_per_mm } = run;
  const { set_mm, before_mg } = pin;
  const mass_mg = before_mg + run.captured_mg;
  const force_N = (depth_mm: number): number =>
    boreArea_mm2 * pressureAtDensity_MPa(law, mass_mg / (boreArea_mm2 * (discHeight_mm - depth_mm)));
  const atStop_N = force_N(set_mm);
  if (atStop_N <= preload_N) return { reached_mm: set_mm, regime: 'on-stop', force_N: atStop_N, mass_mg };
  const greatest_N = preload_N + rate_N_per_mm * set_mm;
  if (force_N(0) >= greatest_N) return limited(run, { greatest_N, before_mg });
  let [low_mm, high_mm] = [0, set_mm];
  for (let i = 0; i < HALVINGS; i++) {
    const middle_mm = (low_mm + high_mm) / 2;
    if (force_N(middle_mm) > preload_N + rate_N_per_mm * (set_mm - middle_mm)) high_mm = middle_mm;
    else low_mm = middle_mm;
  }
  const reached_mm = (low_mm + high_mm) / 2;
  const spring_N = preload_N + rate_N_per_mm * (set_mm - reached_mm);
  return { reached_mm, regime: 'on-spring', force_N: spring_N, mass_mg };
}

/** The bed is too dense for the spring before the pin enters: no pin packs more than its spring can press. */
function limited(run: DiscRun, { greatest_N, before_mg }: { greatest_N: number; before_mg: number }): Tamp {
  const { boreArea_mm2, discHeight_mm, law, captured_mg } = run;
  const densest_g_per_mL = densityAtPressure_g_per_mL(law, greatest_N / boreArea_mm2);
  const most_mg = densest_g_per_mL * boreArea_mm2 * discHeight_mm;
  const mass_mg = Math.max(before_mg, Math.min(before_mg + captured_mg, most_mg));
  return { reached_mm: 0, regime: 'limited', force_N: greatest_N, mass_mg };
}
