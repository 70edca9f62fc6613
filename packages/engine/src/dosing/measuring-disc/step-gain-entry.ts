import { defineEntry, DomainError, requireWithin, type Entry, type NumberField, type ValuesOf } from '#catalogue';
import type { CompressionKnowledge } from '#materials';
import type { Quantity } from '#quantity';
import { parameterDraws } from '../parameter-draws.ts';
import { valuesAtMeans } from '../parameter-values.ts';
import { stepGain } from '../step-gain.ts';
import { boreArea_mm2 } from './bore-area.ts';
import { discParameters } from './disc-parameters.ts';
import {
  A,
  B,
  BORE,
  DEPTHS,
  FEED,
  GEOMETRY,
  HEIGHT,
  INITIAL,
  PRELOAD,
  RATE,
  REFILL,
  REFILLED,
} from './entry-fields.ts';
import { evaluatorOfRun } from './evaluator-of-run.ts';
import { LEAST_PLUG_mm, runOfValues } from './run-of-values.ts';

/** How unsure an input is, one standard deviation in its own unit; left out it is taken as known. */
const sd = <K extends string, U extends string>(key: K, unit: U, title: string) =>
  ({ key, title: `${title}, one sd`, kind: 'number', unit, min: 0, optional: true }) as const satisfies NumberField;

const INPUTS = [
  { key: 'station', title: 'station of the pin that is turned', kind: 'integer', unit: '1', min: 1, max: 12 },
  { key: 'step_mm', title: 'one step of its scale', kind: 'number', unit: 'mm', above: 0, max: 5 },
  FEED,
  BORE,
  HEIGHT,
  DEPTHS,
  REFILL,
  A,
  { ...B, optional: true },
  { ...INITIAL, optional: true },
  {
    key: 'pairDensity_g_per_mL',
    title: 'density of a pair of density and pressure, in place of b',
    kind: 'number',
    unit: 'g/mL',
    above: 0,
    max: 5,
    optional: true,
  },
  { key: 'pairPressure_MPa', title: 'pressure of that pair', kind: 'number', unit: 'MPa', above: 0, optional: true },
  PRELOAD,
  RATE,
  REFILLED,
  {
    key: 'capturedScale_ratio',
    title: 'powder dragged in per tamp, scale of its half-normal distribution',
    kind: 'number',
    unit: '1',
    min: 0,
    max: 3,
    optional: true,
  },
  sd('feedDensitySd_g_per_mL', 'g/mL', 'feed density'),
  sd('refillSd_ratio', '1', 'refill factor'),
  sd('aSd_frac', '1', 'Kawakita a'),
  sd('bSd_per_MPa', '1/MPa', 'Kawakita b'),
  sd('pairDensitySd_g_per_mL', 'g/mL', 'density of the pair'),
  sd('preloadSd_N', 'N', 'spring preload'),
  sd('rateSd_N_per_mm', 'N/mm', 'spring rate'),
  { ...sd('offsetsSd_mm', 'mm', 'setting of each pin'), list: { min: 1, max: 12 } },
  {
    key: 'shallowest_mm',
    title: 'least depth that the machine reaches',
    kind: 'number',
    unit: 'mm',
    min: 0,
    max: 60,
    optional: true,
  },
  {
    key: 'deepest_mm',
    title: 'greatest depth that the machine reaches',
    kind: 'number',
    unit: 'mm',
    min: 0,
    max: 60,
    optional: true,
  },
  { key: 'seed', title: 'seed of the draws, 1 unless given', kind: 'integer', unit: '1', min: 0, optional: true },
] as const;

type Inputs = ValuesOf<typeof INPUTS>;

/** Mass per step of a pin, with the draws behind it: the number beside its step keys. */
export const stepGainEntry: Entry = defineEntry({
  id: 'dosing.disc-step-gain',
  title: 'Mass per step of a pin, over what is not known',
  equation:
    'g = \\operatorname{median}\\,g_i,\\quad g_i = \\frac{W_2-W_1}{n},\\quad W_2 = W(p_k+s),\\quad W_1 = W(p_k-s)',
  inputs: INPUTS,
  outputs: [
    { key: 'median_mg_per_step', title: 'mass per step, median of the draws', kind: 'number', unit: 'mg/step' },
    { key: 'low90_mg_per_step', title: 'lower end of the central 90 %', kind: 'number', unit: 'mg/step' },
    { key: 'high90_mg_per_step', title: 'upper end of the central 90 %', kind: 'number', unit: 'mg/step' },
    { key: 'shallower_mg', title: 'mass one step less deep, at the means', kind: 'number', unit: 'mg' },
    { key: 'deeper_mg', title: 'mass one step deeper, at the means', kind: 'number', unit: 'mg' },
    { key: 'steps', title: 'steps between the two', kind: 'number', unit: '1' },
  ],
  sources: [
    GEOMETRY,
    {
      text: 'difference quotient over one step to either side, under the 512 draws of the interval',
      read: 'common practice, no source',
    },
  ],
  validity:
    'At these depths. Where the pin changes from stop to spring within the step the gain drops at once. A spring that yields behind this pin takes part of it back. A flush pin has none.',
  restsOn: 'feed density and refill factor on the stop; compression law and springs where the spring yields',
  compute: (inputs) => {
    const { station, step_mm } = inputs;
    const at_mm = inputs.depths_mm[station - 1] ?? 0;
    requireWithin({ [`depths_mm.${station - 1}`]: at_mm }, { above: 0 });
    const range = {
      min_mm: inputs.shallowest_mm ?? 0,
      max_mm: Math.min(inputs.deepest_mm ?? Infinity, inputs.discHeight_mm - LEAST_PLUG_mm),
    };
    for (const depth_mm of inputs.depths_mm) requireWithin({ depth_mm }, { min: 0, below: inputs.discHeight_mm });
    requireWithin({ at_mm }, { min: range.min_mm, max: range.max_mm });
    const parameters = discParameters(knowledgeOf(inputs));
    const evaluatorAt = evaluatorsOf(inputs);
    const draws = parameterDraws(parameters, inputs.seed ?? 1);
    const shallower_mm = Math.max(range.min_mm, at_mm - step_mm);
    const deeper_mm = Math.min(range.max_mm, at_mm + step_mm);
    const means = valuesAtMeans(parameters);
    return {
      ...stepGain({ evaluatorAt, at_mm, step_mm, range, draws }),
      shallower_mg: evaluatorAt(shallower_mm)(means).mass_mg,
      deeper_mg: evaluatorAt(deeper_mm)(means).mass_mg,
      steps: (deeper_mm - shallower_mm) / step_mm,
    };
  },
});

function evaluatorsOf(inputs: Inputs): (depth_mm: number) => ReturnType<typeof evaluatorOfRun> {
  const { boreDiameter_mm, discHeight_mm, depths_mm, station, isRefilledAfterLastPin = true } = inputs;
  const scales = depths_mm.map((_, i) => ({ station: i + 1 }));
  const context = {
    material: { compression: compressionOf(inputs) },
    filler: { disc: { isRefilledAfterLastPin }, pins: { scales } },
  };
  const setUp = { boreDiameter_mm, boreArea_mm2: boreArea_mm2(boreDiameter_mm), discHeight_mm };
  return (depth_mm) => {
    const moved_mm = depths_mm.map((set_mm, i) => (i + 1 === station ? depth_mm : set_mm));
    return evaluatorOfRun(runOfValues(context, { ...setUp, depths_mm: moved_mm }), depths_mm.length);
  };
}

function knowledgeOf(inputs: Inputs): Parameters<typeof discParameters>[0] {
  const { depths_mm, offsetsSd_mm, capturedScale_ratio } = inputs;
  return {
    feedDensity_g_per_mL: given({ mean: inputs.feedDensity_g_per_mL, sd: inputs.feedDensitySd_g_per_mL }),
    refill_ratio: given({ mean: inputs.refill_ratio, sd: inputs.refillSd_ratio }),
    compression: compressionOf(inputs),
    preload_N: given({ mean: inputs.preload_N, sd: inputs.preloadSd_N }),
    rate_N_per_mm: given({ mean: inputs.rate_N_per_mm, sd: inputs.rateSd_N_per_mm }),
    ...(capturedScale_ratio === undefined ? {} : { captured_ratio: given({ mean: 0, sd: capturedScale_ratio }) }),
    offsets: depths_mm.flatMap((set_mm, i) =>
      set_mm > 0 ? [{ station: i + 1, off_mm: given({ mean: 0, sd: offsetsSd_mm?.[i] }) }] : [],
    ),
  };
}

/** Constants of the law, or a pair from which b is solved draw by draw. */
function compressionOf(inputs: Inputs): CompressionKnowledge {
  const { b_per_MPa, pairDensity_g_per_mL, pairPressure_MPa, initialDensity_g_per_mL } = inputs;
  const a_frac = given({ mean: inputs.a_frac, sd: inputs.aSd_frac });
  if (b_per_MPa !== undefined)
    return {
      ...{ law: 'kawakita', a_frac, b_per_MPa: given({ mean: b_per_MPa, sd: inputs.bSd_per_MPa }) },
      ...(initialDensity_g_per_mL === undefined ? {} : { initialDensity_g_per_mL }),
    };
  if (pairDensity_g_per_mL === undefined || pairPressure_MPa === undefined)
    throw new DomainError('invalid-input', { fields: [B.key, 'pairDensity_g_per_mL', 'pairPressure_MPa'] });
  const density_g_per_mL = given({ mean: pairDensity_g_per_mL, sd: inputs.pairDensitySd_g_per_mL });
  return { law: 'one-pair', a_frac, density_g_per_mL, pressure_MPa: pairPressure_MPa };
}

function given({ mean, sd = 0 }: { readonly mean: InUnitOfField; readonly sd: InUnitOfField | undefined }): Quantity {
  return { basis: 'calibrated', mean, sd, from: 'given' };
}

/** A number in the unit of the field it comes from. */
type InUnitOfField = number;
