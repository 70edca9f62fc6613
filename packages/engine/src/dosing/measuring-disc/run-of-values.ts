import type { DosingContext, ParameterValues } from '../dosing.ts';
import { offsetKey } from './keys.ts';
import { lawOfValues } from './law-of-values.ts';
import type { SetUp } from './set-up.ts';
import type { DiscRun } from './tamp-stations.ts';

/** A pin never reaches the base of the disc, however far its setting is off. */
const LEAST_PLUG_mm = 0.5;

/**
 * The station model's input for one set of parameter values.
 *
 * @param context - material and filler
 * @param setUp - parts and depths
 * @param values - every parameter of `parameters` by key
 * @returns the run
 * @throws nothing
 * @source none: bookkeeping
 */
export function runOfValues(context: DosingContext, setUp: SetUp, values: ParameterValues): DiscRun {
  const value = (key: string): number => values[key] ?? 0;
  const { boreDiameter_mm, boreArea_mm2, discHeight_mm } = setUp;
  const feedDensity_g_per_mL = value('feedDensity_g_per_mL');
  const depths_mm = context.filler.pins.scales.map(({ station }, i) => {
    const set_mm = setUp.depths_mm[i] ?? 0;
    if (set_mm === 0) return 0;
    return Math.min(discHeight_mm - LEAST_PLUG_mm, Math.max(0, set_mm + value(offsetKey(station))));
  });
  return {
    boreArea_mm2,
    discHeight_mm,
    depths_mm,
    feedDensity_g_per_mL,
    refill_ratio: value('refill_ratio'),
    captured_mg: value('captured_ratio') * feedDensity_g_per_mL * boreArea_mm2 * boreDiameter_mm,
    law: lawOfValues(context.material.compression, values, boreArea_mm2),
    preload_N: value('springPreload_N'),
    rate_N_per_mm: value('springRate_N_per_mm'),
    isRefilledAfterLastPin: context.filler.disc.isRefilledAfterLastPin,
  };
}
