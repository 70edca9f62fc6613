import type { StationTrace } from '@fillwright/engine/dosing';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import type { InputOrigin, NumberKey, NumberReference } from '../number-reference.ts';
import { discRunInputs, type DiscRunInputs } from './disc-run-inputs.ts';
import { gainReferences } from './gain-references.ts';
import { largestReferences } from './largest-references.ts';
import type { PageFacts } from './page-facts.ts';
import { partReferences } from './part-references.ts';
import { scaleReferences } from './scale-references.ts';

type Named = readonly [NumberKey, NumberReference];

/**
 * Numbers of a measuring disc: what each station does, and the slug that comes out.
 *
 * @param facts - candidate with its context
 * @returns references by key
 */
export function discReferences(facts: PageFacts): readonly Named[] {
  const run = discRunInputs(facts);
  const { stations } = facts.candidate.prediction;
  return [
    ...stations.flatMap((station) => stationReferences(facts, run, station)),
    ...slugReferences(facts, run),
    ...looseReference(facts, run),
    ...scaleReferences(facts, run),
    ...partReferences(facts, run),
    ...largestReferences(facts),
  ];
}

function stationReferences(facts: PageFacts, run: DiscRunInputs, trace: StationTrace): readonly Named[] {
  const { station, set_mm, reached_mm, regime, mass_mg, force_N, pressure_MPa } = trace;
  const words = OPEN_NUMBER_WORDS.titles;
  const common = { ...ofStations(ownDepth(facts, run, trace)), station, item: station - 1 };
  const from = station === 1 ? {} : { from: [`mass:${station - 1}`] as const };
  const mass: NumberReference = run.isKawakita
    ? { ...common, ...from, output: 'masses_mg', title: words.mass(station), value: mass_mg }
    : {
        ...byRecurrence(run, isGeometric(facts, station)),
        ...from,
        station,
        item: station,
        title: words.mass(station),
        value: mass_mg,
      };
  const found: Named[] = [
    [`mass:${station}`, mass],
    [`density:${station}`, densityReference(facts, run, trace)],
  ];
  if (regime === 'flush' || force_N === undefined || pressure_MPa === undefined) return found;
  const bySpring: NumberReference = {
    entry: 'dosing.spring-force',
    inputs: {
      preload_N: run.inputs.preload_N,
      rate_N_per_mm: run.inputs['rate_N_per_mm'],
      compression_mm: set_mm - reached_mm,
    },
    origins: { ...run.origins, compression_mm: { number: `reached:${station}` } },
    ...{
      output: 'force_N',
      title: words.force(station),
      station,
      value: force_N,
      letters: { x_set: set_mm, x: reached_mm },
    },
  };
  return [
    ...found,
    [
      `reached:${station}`,
      { ...common, ...from, output: 'reached_mm', title: words.reached(station), value: reached_mm },
    ],
    [
      `force:${station}`,
      regime === 'on-stop'
        ? { ...common, ...from, output: 'forces_N', title: words.force(station), value: force_N }
        : bySpring,
    ],
    [
      `pressure:${station}`,
      {
        entry: 'dosing.tamp-pressure',
        inputs: { forces_N: [force_N], boreDiameter_mm: run.inputs['boreDiameter_mm'] },
        origins: { ...run.origins, forces_N: { number: `force:${station}` } },
        ...{ output: 'pressures_MPa', item: 0, title: words.pressure(station), station, value: pressure_MPa },
      },
    ],
    ...gainReferences(facts, run, trace),
  ];
}

/** How dense the powder is when the pin stands deepest. */
function densityReference({ candidate }: PageFacts, run: DiscRunInputs, trace: StationTrace): NumberReference {
  const { station, reached_mm, density_g_per_mL } = trace;
  const { boreDiameter_mm, discHeight_mm } = run.inputs;
  const bore_mm = candidate.prediction.bore_mm;
  return {
    entry: 'dosing.tamped-density',
    inputs: {
      pressed_mg: density_g_per_mL * (Math.PI / 4) * bore_mm * bore_mm * (discHeight_mm - reached_mm),
      ...{ boreDiameter_mm, discHeight_mm, reached_mm },
    },
    origins: {
      ...{ boreDiameter_mm: run.origins['boreDiameter_mm'] ?? {}, discHeight_mm: run.origins['discHeight_mm'] ?? {} },
      pressed_mg:
        station === 1
          ? { ...run.origins['feedDensity_g_per_mL'], isSolved: true, words: OPEN_NUMBER_WORDS.origins.struck }
          : { number: `mass:${station - 1}` },
      ...(trace.regime === 'flush' ? {} : { reached_mm: { number: `reached:${station}` as const } }),
    },
    output: 'density_g_per_mL',
    ...{ title: OPEN_NUMBER_WORDS.titles.stationDensity(station), station, value: density_g_per_mL },
  };
}

/** The depth of this station's own pin: its scale, and what its setting may be off. */
function ownDepth({ parameters }: PageFacts, run: DiscRunInputs, { station, adjuster }: StationTrace): DiscRunInputs {
  const parameter = adjuster.replace('Depth', 'Offset');
  const prior = parameters.find(({ key }) => key === parameter)?.prior;
  const depths_mm: InputOrigin = {
    words: OPEN_NUMBER_WORDS.origins.setWithPlay,
    number: `scale:${station}`,
    ...(prior ? { parameter, quantity: prior } : {}),
  };
  return { ...run, origins: { ...run.origins, depths_mm } };
}

function ofStations({
  inputs,
  origins,
  isKawakita,
}: DiscRunInputs): Pick<NumberReference, 'entry' | 'inputs' | 'origins'> {
  return { entry: isKawakita ? 'dosing.disc-stations' : '', inputs, origins };
}

/** The catalogue's station model takes Kawakita's law only; with every pin on its stop the geometry alone gives the mass. */
function byRecurrence(
  { inputs, origins }: DiscRunInputs,
  isEnough: boolean,
): Pick<NumberReference, 'entry' | 'inputs' | 'origins' | 'output'> {
  const { feedDensity_g_per_mL, boreDiameter_mm, discHeight_mm, depths_mm, refill_ratio } = inputs;
  const refills_ratio = (depths_mm as readonly number[]).map(() => refill_ratio);
  return {
    entry: isEnough ? 'dosing.disc-recurrence' : '',
    inputs: { feedDensity_g_per_mL, boreDiameter_mm, discHeight_mm, depths_mm, refills_ratio },
    origins: { ...origins, refills_ratio: origins['refill_ratio'] ?? {} },
    output: 'masses_mg',
  };
}

/** Up to this station every pin stands on its stop or is flush, nothing is dragged in, and every refill comes. */
function isGeometric({ candidate, place }: PageFacts, station: number): boolean {
  const upTo = candidate.prediction.stations.slice(0, station);
  const last = upTo.at(-1);
  const isUnfilled =
    station === candidate.prediction.stations.length &&
    !place.context.filler.disc.isRefilledAfterLastPin &&
    last?.regime !== 'flush';
  return (
    !isUnfilled &&
    upTo.every(({ regime, captured_mg }) => (regime === 'on-stop' || regime === 'flush') && captured_mg === 0)
  );
}

function slugReferences({ candidate, place }: PageFacts, run: DiscRunInputs): readonly Named[] {
  const { prediction } = candidate;
  const { axialSpringback_pct, radialSpringback_pct } = place.context.material;
  const { inputs, origins } = run;
  const last = prediction.stations.at(-1);
  const isRefilled = place.context.filler.disc.isRefilledAfterLastPin;
  const inDisc_mm = inputs.discHeight_mm - (isRefilled ? 0 : (last?.reached_mm ?? 0));
  const words = OPEN_NUMBER_WORDS.titles;
  const released = {
    entry: 'dosing.released-slug',
    inputs: {
      discHeight_mm: inDisc_mm,
      boreDiameter_mm: prediction.bore_mm,
      axialSpringback_pct: axialSpringback_pct.mean,
      radialSpringback_pct: radialSpringback_pct.mean,
    },
    origins: {
      ...origins,
      axialSpringback_pct: { quantity: axialSpringback_pct },
      radialSpringback_pct: { quantity: radialSpringback_pct },
    },
  };
  const whole = ofStations(run);
  return [
    ['slug-length', { ...released, output: 'released_mm', title: words.slugLength, value: prediction.released_mm }],
    [
      'slug-springback',
      {
        ...{ ...released, output: 'springback_mm', title: words.springback },
        value: (inDisc_mm * axialSpringback_pct.mean) / 100,
      },
    ],
    ['slug-width', { ...released, output: 'width_mm', title: words.slugWidth, value: prediction.width_mm }],
    [
      'density',
      {
        ...(isRefilled ? whole : { ...whole, entry: '' }),
        ...(last ? { from: [`mass:${last.station}`] as const } : {}),
        ...{ output: 'slugDensity_g_per_mL', title: words.density, unit: 'g/mL', value: prediction.density_g_per_mL },
      },
    ],
  ];
}

/** What the last pin that works leaves loose on the slug. */
function looseReference({ candidate, place }: PageFacts, { inputs, origins }: DiscRunInputs): readonly Named[] {
  const { stations } = candidate.prediction;
  const refilled = place.context.filler.disc.isRefilledAfterLastPin ? stations : stations.slice(0, -1);
  const last = refilled.findLast(({ regime }) => regime !== 'flush');
  if (!last) return [];
  const { axialSpringback_pct } = place.context.material;
  const { discHeight_mm } = inputs;
  const value = last.reached_mm - (axialSpringback_pct.mean / 100) * (discHeight_mm - last.reached_mm);
  return [
    [
      'loose',
      {
        entry: 'dosing.loose-refill',
        inputs: { discHeight_mm, reached_mm: last.reached_mm, axialSpringback_pct: axialSpringback_pct.mean },
        origins: {
          ...origins,
          reached_mm: { number: `reached:${last.station}` },
          axialSpringback_pct: { quantity: axialSpringback_pct },
        },
        ...{ output: 'loose_mm', station: last.station, title: OPEN_NUMBER_WORDS.titles.loose(last.station), value },
      },
    ],
  ];
}
