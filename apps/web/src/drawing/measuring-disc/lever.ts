import type { Place } from '@fillwright/engine/design';
import type { Adjuster, Settings, StationTrace } from '@fillwright/engine/dosing';
import {
  discBore_mm,
  discHeight_mm,
  discsFor,
  readingOfDepth_division,
  springSets,
  type DiscPart,
  type PinAxis,
  type Range_mm,
  type SpringPart,
  type StationScale,
} from '@fillwright/engine/fillers';

/** Scale of one pin on the disc that is mounted: what turns depths into readings and back. */
interface MountedScale {
  readonly axis: PinAxis;
  readonly scale: StationScale;
  readonly discHeight_mm: number;
}

/** One pin as a person turns it. Depths are below the upper face of the mounted disc. */
export interface Lever {
  readonly station: number;
  readonly key: string;
  readonly depth_mm: number;
  readonly reading_division: number;
  readonly step_mm: number;
  readonly machine: Range_mm;
  readonly validated: Range_mm;
  readonly mounted: MountedScale;
  /** What the pin does where it stands. */
  readonly trace: StationTrace | undefined;
}

/** The disc with its springs and pins, as it stands. */
export interface DiscSetUp {
  readonly disc: DiscPart;
  readonly springs: SpringPart | undefined;
  readonly height_mm: number;
  readonly bore_mm: number;
  readonly levers: readonly Lever[];
}

interface Asked {
  readonly settings: Settings;
  readonly stations: readonly StationTrace[];
}

/** Section, levers and letters ask for the same set-up in one frame. */
const FOUND = new WeakMap<Place, Asked & { readonly found: DiscSetUp | undefined }>();

/**
 * The parts and pins of a set-up with a measuring disc.
 *
 * @param place - filler and shell
 * @param setUp - settings, and the stations as predicted
 * @returns disc, springs and one lever per pin; undefined when the disc is not in stock for this shell
 */
export function discSetUp(place: Place, { settings, stations }: Asked): DiscSetUp | undefined {
  const last = FOUND.get(place);
  if (last?.settings === settings && last.stations === stations) return last.found;
  const found = computed(place, { settings, stations });
  FOUND.set(place, { settings, stations, found });
  return found;
}

function computed({ context, method }: Place, { settings, stations }: Asked): DiscSetUp | undefined {
  const { filler, shell } = context;
  const disc = discsFor(filler, shell.size).find(({ number }) => number === settings.parts['disc']);
  if (!disc) return undefined;
  const height_mm = discHeight_mm(disc);
  const adjusters = method.adjusters(context, settings).filter((one) => one.kind === 'setting');
  const levers = filler.pins.scales.map((scale, i) => {
    const mounted = { axis: filler.pins, scale, discHeight_mm: height_mm };
    return leverOf(mounted, { adjuster: adjusters[i], settings, trace: stations[i] });
  });
  return {
    disc,
    springs: springSets(filler).find(({ number }) => number === settings.parts['springs']),
    height_mm,
    bore_mm: discBore_mm(disc),
    levers: levers.filter((lever) => lever !== undefined),
  };
}

function leverOf(
  mounted: MountedScale,
  of: {
    readonly adjuster: Extract<Adjuster, { kind: 'setting' }> | undefined;
    readonly settings: Settings;
    readonly trace: StationTrace | undefined;
  },
): Lever | undefined {
  const { adjuster, settings, trace } = of;
  if (!adjuster) return undefined;
  const depth_mm = settings.values[adjuster.key] ?? NaN;
  return {
    station: mounted.scale.station,
    key: adjuster.key,
    depth_mm,
    reading_division: readingOfDepth_division(mounted, depth_mm),
    step_mm: adjuster.step_mm,
    machine: adjuster.machineRange,
    validated: adjuster.validatedRange,
    mounted,
    trace,
  };
}
