import type { StationTrace } from '../dosing.ts';
import { pinKey } from './keys.ts';
import type { DiscRun } from './disc-run.ts';
import { FLUSH, LIMITED, ON_SPRING, ON_STOP, tamp, tampColumns } from './tamp.kernel.ts';

const REGIME_NAMES: Readonly<Record<number, StationTrace['regime']>> = {
  [FLUSH]: 'flush',
  [ON_STOP]: 'on-stop',
  [ON_SPRING]: 'on-spring',
  [LIMITED]: 'limited',
};

/**
 * Fills one bore station by station, and says at each what the pin did: see `tamp` for the model.
 *
 * @param run - bore, pins, powder and springs
 * @returns one trace per station; the dose is the mass of the last
 * @throws nothing: the caller has checked the ranges
 * @source this project's station model
 * @validity pins above the disc's base (depth < height); one refill factor for all stations
 */
export function tampStations(run: DiscRun): readonly StationTrace[] {
  const { boreArea_mm2, discHeight_mm, depths_mm, feedDensity_g_per_mL } = run;
  const out = tampColumns(depths_mm.length);
  tamp(run, out);
  let before_mg = feedDensity_g_per_mL * boreArea_mm2 * discHeight_mm;
  return depths_mm.map((set_mm, k) => {
    const [reached_mm, pressed_mg, force_N] = [out.reached_mm[k]!, out.pressed_mg[k]!, out.forces_N[k]!];
    const captured_mg = pressed_mg - before_mg;
    before_mg = out.masses_mg[k]!;
    return {
      station: k + 1,
      adjuster: pinKey(k + 1),
      set_mm,
      reached_mm,
      regime: REGIME_NAMES[out.regimes[k]!] ?? 'flush',
      ...(set_mm > 0 ? { force_N, pressure_MPa: force_N / boreArea_mm2 } : {}),
      density_g_per_mL: pressed_mg / (boreArea_mm2 * (discHeight_mm - reached_mm)),
      captured_mg,
      mass_mg: before_mg,
    };
  });
}
