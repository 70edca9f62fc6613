import type { Powder } from '#materials';
import type { ParameterValues } from '../dosing.ts';
import { offsetKey } from './keys.ts';
import { lawOfValues } from './law-of-values.ts';
import type { SetUp } from './set-up.ts';
import type { DiscRun } from './disc-run.ts';

/** A pin never reaches the base of the disc, however far its setting is off. */
export const LEAST_PLUG_mm = 0.5;

/** Of the context of a dose what a run needs. */
export interface RunContext {
  readonly material: Pick<Powder, 'compression'>;
  readonly filler: {
    readonly disc: { readonly isRefilledAfterLastPin: boolean };
    readonly pins: { readonly scales: readonly { readonly station: number }[] };
  };
}

/** Of a set-up what a run needs. */
type RunSetUp = Pick<SetUp, 'boreDiameter_mm' | 'boreArea_mm2' | 'discHeight_mm' | 'depths_mm'>;

/**
 * The station model's input for sets of parameter values.
 *
 * @param context - material and filler
 * @param setUp - parts and depths
 * @returns a function from values of `parameters` by key (what is left out counts as 0) to the run; its depths are
 *   written over by the next call
 * @throws nothing
 * @source none: bookkeeping
 */
export function runOfValues(context: RunContext, setUp: RunSetUp): (values: ParameterValues) => DiscRun {
  const { boreDiameter_mm, boreArea_mm2, discHeight_mm } = setUp;
  const { compression } = context.material;
  const { isRefilledAfterLastPin } = context.filler.disc;
  const offsetKeys = context.filler.pins.scales.map(({ station }) => offsetKey(station));
  const deepest_mm = discHeight_mm - LEAST_PLUG_mm;
  const depths_mm = [...setUp.depths_mm];
  return (values) => {
    for (let k = 0; k < depths_mm.length; k++) {
      const set_mm = setUp.depths_mm[k]!;
      if (set_mm > 0) depths_mm[k] = Math.min(deepest_mm, Math.max(0, set_mm + (values[offsetKeys[k]!] ?? 0)));
    }
    const feedDensity_g_per_mL = values['feedDensity_g_per_mL'] ?? 0;
    return {
      boreArea_mm2,
      discHeight_mm,
      depths_mm,
      feedDensity_g_per_mL,
      refill_ratio: values['refill_ratio'] ?? 0,
      captured_mg: (values['captured_ratio'] ?? 0) * feedDensity_g_per_mL * boreArea_mm2 * boreDiameter_mm,
      law: lawOfValues(compression, values, boreArea_mm2),
      preload_N: values['springPreload_N'] ?? 0,
      rate_N_per_mm: values['springRate_N_per_mm'] ?? 0,
      isRefilledAfterLastPin,
    };
  };
}
