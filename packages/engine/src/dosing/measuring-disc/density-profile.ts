import { densityAtPressure_g_per_mL, meanStress_frac, transmittedStress_frac } from '#materials';
import type { DosingContext, Prediction, StationTrace } from '../dosing.ts';
import type { DiscRun } from './disc-run.ts';

const STEPS = 8;

/**
 * Local density along the slug, drawn from wall friction: the top feels the whole ram stress, the bottom what the wall
 * leaves of it. Scaled to the mean density, which the compression law already knows with its friction. Powder that was
 * refilled after the last tamp lies loose on top.
 *
 * @param context - wall friction and lateral stress ratio of the powder
 * @param run - the station model's input
 * @param stations - its result
 * @returns points from the top of the dose (0) to the bottom (1)
 * @throws nothing
 * @source Shaxby & Evans, Trans. Faraday Soc. 19 (1923) 60 (from memory); scaling to the mean is this project's choice
 * @validity a picture, not a measurement: no slug of a tamping filler was found sectioned in the open literature
 */
export function densityProfile(
  context: DosingContext,
  run: DiscRun,
  stations: readonly StationTrace[],
): Prediction['profile'] {
  const last = [...stations].reverse().find((station) => station.regime !== 'flush');
  const final_mg = stations.at(-1)?.mass_mg ?? NaN;
  const mean_g_per_mL = final_mg / (run.boreArea_mm2 * run.discHeight_mm);
  if (!last) return [0, 1].map((depth_frac) => ({ depth_frac, density_g_per_mL: mean_g_per_mL }));
  const plug_mm = run.discHeight_mm - last.reached_mm;
  const loose_mg = final_mg - last.density_g_per_mL * run.boreArea_mm2 * plug_mm;
  const loose_mm = loose_mg > 0 ? last.reached_mm : 0;
  const whole_mm = plug_mm + loose_mm;
  const shape = plugShape(context, run, { pressure_MPa: last.pressure_MPa ?? 0, plug_mm });
  const scale = last.density_g_per_mL / mean(shape);
  const plug = shape.map((density, i) => ({
    depth_frac: (loose_mm + (plug_mm * i) / STEPS) / whole_mm,
    density_g_per_mL: density * scale,
  }));
  if (loose_mm === 0) return plug;
  const loose_g_per_mL = loose_mg / (run.boreArea_mm2 * loose_mm);
  return [0, loose_mm / whole_mm].map((depth_frac) => ({ depth_frac, density_g_per_mL: loose_g_per_mL })).concat(plug);
}

/** Density by the law at the local stress, at STEPS + 1 points from the top of the plug. */
function plugShape(
  context: DosingContext,
  run: DiscRun,
  plug: { readonly pressure_MPa: number; readonly plug_mm: number },
): readonly number[] {
  const friction = {
    wallFriction_ratio: context.material.wallFriction_ratio.mean,
    lateralStress_ratio: context.material.lateralStress_ratio.mean,
    diameter_mm: 2 * Math.sqrt(run.boreArea_mm2 / Math.PI),
  };
  const top_MPa = plug.pressure_MPa / meanStress_frac({ ...friction, length_mm: plug.plug_mm });
  return Array.from({ length: STEPS + 1 }, (_, i) => {
    const below_frac = i === 0 ? 1 : transmittedStress_frac({ ...friction, length_mm: (plug.plug_mm * i) / STEPS });
    return densityAtPressure_g_per_mL(run.law, top_MPa * below_frac);
  });
}

/** Mean over the length by the trapezium rule. */
function mean(values: readonly number[]): number {
  const ends = ((values[0] ?? NaN) + (values.at(-1) ?? NaN)) / 2;
  return (ends + values.slice(1, -1).reduce((sum, value) => sum + value, 0)) / STEPS;
}
