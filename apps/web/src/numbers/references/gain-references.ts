import { standardUncertainty } from '@fillwright/engine/quantity';
import type { CompressionKnowledge } from '@fillwright/engine/materials';
import type { StationTrace } from '@fillwright/engine/dosing';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import type { InputOrigin, NumberKey, NumberReference } from '../number-reference.ts';
import type { DiscRunInputs } from './disc-run-inputs.ts';
import type { PageFacts } from './page-facts.ts';

/** Inputs of the step gain that say how unsure an input is, by the parameter behind it. */
const SDS: Readonly<Record<string, string>> = {
  feedDensity_g_per_mL: 'feedDensitySd_g_per_mL',
  refill_ratio: 'refillSd_ratio',
  a_frac: 'aSd_frac',
  b_per_MPa: 'bSd_per_MPa',
  pairDensity_g_per_mL: 'pairDensitySd_g_per_mL',
  springPreload_N: 'preloadSd_N',
  springRate_N_per_mm: 'rateSd_N_per_mm',
  captured_ratio: 'capturedScale_ratio',
};

/**
 * What a step of the pin of a station does: the median over the draws, as beside its keys.
 *
 * @param facts - candidate with its details
 * @param run - inputs of the station model
 * @param trace - the station
 * @returns its reference; none for a flush pin or while the details are computed
 */
export function gainReferences(
  facts: PageFacts,
  run: DiscRunInputs,
  trace: StationTrace,
): readonly (readonly [NumberKey, NumberReference])[] {
  const gain = facts.details?.gains.settings.find(({ key }) => key === trace.adjuster);
  if (!gain) return [];
  const { station } = trace;
  const title = OPEN_NUMBER_WORDS.titles.gain(station);
  const shown = { output: 'median_mg_per_step', station, title, value: gain.median_mg_per_step, unit: 'mg/step' };
  const law = lawInputs(facts, run);
  if (!law) return [[`gain:${station}`, { entry: '', inputs: {}, ...shown }]];
  const { machineRange } = facts.place.context.filler.pins;
  const { feedDensity_g_per_mL, boreDiameter_mm, discHeight_mm, depths_mm, refill_ratio } = run.inputs;
  const { preload_N, rate_N_per_mm, isRefilledAfterLastPin } = run.inputs;
  const inputs = {
    ...{
      station,
      step_mm: gain.step_mm,
      feedDensity_g_per_mL,
      boreDiameter_mm,
      discHeight_mm,
      depths_mm,
      refill_ratio,
    },
    ...{ preload_N, rate_N_per_mm, isRefilledAfterLastPin, ...law, ...sdsOf(facts) },
    ...{ shallowest_mm: machineRange.min_mm, deepest_mm: machineRange.max_mm, seed: facts.input.seed },
  };
  const origins = { ...run.origins, ...stepOrigins(facts, trace) };
  const { remarks } = OPEN_NUMBER_WORDS;
  return [[`gain:${station}`, { entry: 'dosing.disc-step-gain', inputs, origins, ...shown, remark: remarks.gain }]];
}

function sdsOf({ parameters, candidate }: PageFacts): Readonly<Record<string, unknown>> {
  const sds = parameters.flatMap(({ key, prior }): [string, number][] => {
    const name = SDS[key];
    return name === undefined ? [] : [[name, standardUncertainty(prior)]];
  });
  const offsetsSd_mm = candidate.prediction.stations.map(({ adjuster }) => {
    const offset = parameters.find(({ key }) => key === adjuster.replace('Depth', 'Offset'));
    return offset ? standardUncertainty(offset.prior) : 0;
  });
  return { ...Object.fromEntries(sds), offsetsSd_mm };
}

function stepOrigins({ place }: PageFacts, { station }: StationTrace): Readonly<Record<string, InputOrigin>> {
  const filler: InputOrigin = { words: OPEN_NUMBER_WORDS.origins.filler(place.context.filler.name) };
  const pin: InputOrigin = { words: OPEN_NUMBER_WORDS.origins.setWithPlay, number: `scale:${station}` };
  const hasScale = place.context.filler.pins.zeroDiscHeight_mm !== undefined;
  return {
    ...{ step_mm: filler, shallowest_mm: filler, deepest_mm: filler },
    ...(hasScale ? { depths_mm: pin } : {}),
  };
}

/** The law as the draws take it: b itself, or the pair from which it is solved in each of them. */
function lawInputs({ place, parameters }: PageFacts, run: DiscRunInputs): Readonly<Record<string, number>> | undefined {
  const { compression } = place.context.material;
  const mean = (key: string): number => parameters.find((one) => one.key === key)?.prior.mean ?? NaN;
  switch (compression.law) {
    case 'walker':
      return undefined;
    case 'kawakita': {
      const { initialDensity_g_per_mL } = compression;
      return {
        ...{ a_frac: mean('a_frac'), b_per_MPa: mean('b_per_MPa') },
        ...(initialDensity_g_per_mL === undefined ? {} : { initialDensity_g_per_mL }),
      };
    }
    case 'one-pair':
    case 'one-pair-by-force':
      return {
        ...{ a_frac: mean('a_frac'), pairDensity_g_per_mL: mean('pairDensity_g_per_mL') },
        pairPressure_MPa: pairPressure_MPa(compression, run),
      };
  }
}

type Pair = Extract<CompressionKnowledge, { law: 'one-pair' | 'one-pair-by-force' }>;

function pairPressure_MPa(pair: Pair, { inputs }: DiscRunInputs): number {
  if (pair.law === 'one-pair') return pair.pressure_MPa;
  const bore_mm = Number(inputs['boreDiameter_mm']);
  return (4 * pair.force_N) / (Math.PI * bore_mm * bore_mm);
}
