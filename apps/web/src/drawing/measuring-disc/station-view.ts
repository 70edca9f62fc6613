import { readingOfDepth_division } from '@fillwright/engine/fillers';
import { FILL_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import { fixed, inMillimetres } from '../figures.ts';
import type { DrawnSetUp } from '../method-drawing.ts';
import { gainOf } from './gain-of.ts';
import type { DiscSetUp, Lever } from './lever.ts';
import { readingsOf } from './depth-of-text.ts';
import type { PinLeverProps } from './pin-lever.tsx';
import { springOf_N } from './preload-of.ts';
import { scaleText } from './scale-text.ts';
import { gainText, stateText } from './station-words.ts';
import type { StationOutcomeProps, StepKeysProps } from './station-texts.tsx';

/** Everything that is said at one station, as plain texts and numbers: what does not change is not rendered again. */
export interface StationView {
  readonly pin: Omit<PinLeverProps, 'bore_mm' | 'width_mm' | 'height_mm' | 'carryOut'>;
  readonly keys: Omit<StepKeysProps, 'axis_mm' | 'width_mm' | 'height_mm' | 'carryOut'>;
  readonly outcome: Omit<StationOutcomeProps, 'bore_mm' | 'width_mm'>;
  readonly density: string;
  /** Unit of the density, at the first station only. */
  readonly unit: string;
}

/** The bar of a force ends so far above the preload of the spring. */
const BAR_OVER_PRELOAD = 1.25;
const SLACK_mm = 1e-9;

/**
 * What is said at one station.
 *
 * @param setUp - the set-up, and where it stood before the move
 * @param found - its parts and levers
 * @param index - of the station, from 0
 * @returns texts; undefined when there is no such station
 */
export function stationView(setUp: DrawnSetUp, found: DiscSetUp, index: number): StationView | undefined {
  const { stations } = setUp.candidate.prediction;
  const [lever, trace] = [found.levers[index], stations[index]];
  if (!lever || !trace) return undefined;
  const before = setUp.before?.prediction.stations[index];
  const { density_g_per_mL } = trace;
  const outcome = outcomeView(setUp, { found, lever, index });
  if (!outcome) return undefined;
  return {
    pin: pinView(setUp, lever, before),
    keys: keysView(setUp, lever),
    outcome,
    density: fixed(density_g_per_mL, 2),
    unit: index === 0 ? 'g/mL' : '',
  };
}

function isOutside({ depth_mm, validated }: Lever): boolean {
  return depth_mm > validated.max_mm + SLACK_mm || depth_mm < validated.min_mm - SLACK_mm;
}

function isYielding({ trace }: Lever): boolean {
  return trace?.regime === 'on-spring' || trace?.regime === 'limited';
}

function pinView(setUp: DrawnSetUp, lever: Lever, before: { readonly set_mm: number } | undefined): StationView['pin'] {
  const { station, depth_mm, validated, mounted, trace } = lever;
  const { step_division } = mounted.scale;
  const shown = (reading_division: number): string => scaleText(reading_division, step_division);
  const at = (mm: number): number => readingOfDepth_division(mounted, mm);
  const { low_division, high_division } = readingsOf(lever);
  const isFlush = depth_mm === 0;
  const depth = isFlush ? FILL_WORDS.flush : inMillimetres(depth_mm);
  return {
    station,
    depth_mm,
    reached_mm: trace?.reached_mm ?? depth_mm,
    reading: shown(lever.reading_division),
    depthText: depth,
    was: before && before.set_mm !== depth_mm ? shown(at(before.set_mm)) : undefined,
    isOutside: isOutside(lever),
    valueNow: Number(lever.reading_division.toFixed(6)),
    valueMin: Number(low_division.toFixed(6)),
    valueMax: Number(high_division.toFixed(6)),
    valueText: FILL_WORDS.pinText({
      reading: shown(lever.reading_division),
      depth: fixed(depth_mm, 1),
      low: shown(at(validated.min_mm)),
      high: shown(at(validated.max_mm)),
      gain: FILL_WORDS.gainText(gainShown(setUp, lever)),
      what: trace ? stateText(trace) : '',
    }),
  };
}

/** Not known until it is computed for a pin that has just gone on its spring, whatever it gave a moment ago. */
function gainShown({ details, areDetailsPending }: DrawnSetUp, lever: Lever): string {
  return isOld(areDetailsPending, lever) ? '' : gainText(gainOf(details, lever.key));
}

/** The gain is that of a pin still on its stop. */
function isOld(areDetailsPending: boolean, lever: Lever): boolean {
  return areDetailsPending && isYielding(lever);
}

function keysView(setUp: DrawnSetUp, lever: Lever): StationView['keys'] {
  const { details, areDetailsPending } = setUp;
  const gain = gainOf(details, lever.key);
  const isKnown = gain !== undefined && !isOld(areDetailsPending, lever);
  return {
    station: lever.station,
    gain: gainShown(setUp, lever),
    gainRange: isKnown ? `${fixed(gain.low90_mg_per_step, 1)}\u2013${fixed(gain.high90_mg_per_step, 1)}` : '',
    isPending: areDetailsPending && isKnown,
  };
}

function outcomeView(
  { place, candidate, before }: DrawnSetUp,
  at: { readonly found: DiscSetUp; readonly lever: Lever; readonly index: number },
): StationView['outcome'] | undefined {
  const { lever, index, found } = at;
  const { stations } = candidate.prediction;
  const trace = stations[index];
  if (!trace) return undefined;
  const { mass_mg, force_N = 0 } = trace;
  const entering_mg = stations[index - 1]?.mass_mg ?? struckMass_mg(place, found);
  const top_N = BAR_OVER_PRELOAD * springOf_N(found.springs);
  return {
    station: lever.station,
    mass: quantityForReading(mass_mg, 'mg', { decimals: 0 }),
    added: trace.regime === 'flush' ? '' : FILL_WORDS.adds(fixed(mass_mg - entering_mg, 0)),
    was: massBefore(before?.prediction.stations[index]?.mass_mg, mass_mg),
    state: stateText(trace),
    isYielding: isYielding(lever),
    isFlush: trace.regime === 'flush',
    isOutside: isOutside(lever),
    force_frac: Number(Math.min(1, force_N / top_N).toFixed(3)),
    preload_frac: 1 / BAR_OVER_PRELOAD,
  };
}

/** The old mass, where it was another one. */
function massBefore(before_mg: number | undefined, mass_mg: number): string | undefined {
  return before_mg === undefined || Math.abs(before_mg - mass_mg) < 0.05 ? undefined : fixed(before_mg, 0);
}

/** Mass in the bore before the first tamp: the struck bore at the feed density. @returns mg */
function struckMass_mg({ context }: DrawnSetUp['place'], { bore_mm, height_mm }: DiscSetUp): number {
  return (context.material.feedDensity_g_per_mL.mean * Math.PI * bore_mm * bore_mm * height_mm) / 4;
}
