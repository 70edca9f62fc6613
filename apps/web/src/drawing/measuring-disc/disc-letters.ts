import type { DrawnSetUp } from '../method-drawing.ts';
import type { DrawnLetter } from '../opening.ts';
import { levelLetter, uprightLetter, type PlacedLetter } from '../placed-letter.ts';
import { discSetUp } from './lever.ts';
import { stationLayout, type StationPlace } from './station-layout.ts';

type Place = Omit<PlacedLetter, 'letter'>;

/** One station as letters see it; heights are those of the drawing, downwards from the base line. */
interface At extends StationPlace {
  readonly face_mm: number;
  readonly set_mm: number;
  readonly reached_mm: number;
  /** Left end of the bore before; the same one at the first station. */
  readonly boreBefore_mm: number;
}

const BED_mm = 0.55;

/** A depth with less room than a letter needs has it underneath, in the powder: above lie spring and pin. */
const SHORT_mm = 1.5;
const UNDER_mm = 0.8;
const isShort = (depth_mm: number): boolean => depth_mm < SHORT_mm;
const shareBeside = (depth_mm: number): ShareOfDepth => (isShort(depth_mm) ? (depth_mm + UNDER_mm) / depth_mm : 0.5);
/** Where a letter stands beside a depth, no unit. */
type ShareOfDepth = number;

const PLACES: Readonly<Record<string, (at: At) => Place>> = {
  'feed-density': ({ axis_mm, face_mm }) => ({ at: { x_mm: axis_mm + 1.45, y_mm: face_mm - BED_mm } }),
  refill: ({ axis_mm, face_mm }) => ({ at: { x_mm: axis_mm + 0.3, y_mm: face_mm - BED_mm } }),
  'bore-area': ({ bore_mm, axis_mm }) => levelLetter({ y_mm: -1.9, from_mm: bore_mm, to_mm: axis_mm }),
  'bore-diameter': ({ bore_mm, axis_mm }) => levelLetter({ y_mm: -3.4, from_mm: bore_mm, to_mm: axis_mm }),
  'disc-height': ({ end_mm, face_mm }) =>
    // In the wall beyond the scale's numbers; the letter before it, where the scale has ended.
    uprightLetter({ x_mm: end_mm - 0.5, from_mm: 0, to_mm: face_mm, share: 0.25, isBefore: true }),
  'pin-depth': ({ bore_mm, face_mm, set_mm }) =>
    uprightLetter({ x_mm: bore_mm + 0.5, from_mm: face_mm, to_mm: face_mm + set_mm, share: shareBeside(set_mm) }),
  'reached-depth': ({ bore_mm, face_mm, set_mm, reached_mm }) =>
    uprightLetter({
      ...{ x_mm: bore_mm + 1.7, from_mm: face_mm, to_mm: face_mm + reached_mm },
      share: isShort(set_mm) ? (set_mm + UNDER_mm) / reached_mm : 0.5,
    }),
  mass: ({ bore_mm }) => ({ at: { x_mm: bore_mm + 0.25, y_mm: -0.6 } }),
  'mass-before': ({ boreBefore_mm }) => ({ at: { x_mm: boreBefore_mm + 0.25, y_mm: -0.6 } }),
  // Under the letters of a short depth.
  force: ({ bore_mm, axis_mm, face_mm, set_mm, reached_mm }) => ({
    at: {
      x_mm: (bore_mm + axis_mm) / 2,
      y_mm: face_mm + (isShort(set_mm) ? set_mm + 2.3 * UNDER_mm : reached_mm + 0.7),
    },
  }),
};

/**
 * Letters of an open equation that are measured in the machine's section.
 *
 * @param setUp - what is drawn
 * @param letters - of the equation; one without a station stands at the first
 * @returns those that have a place here
 */
export function discLetters(
  { place, candidate }: DrawnSetUp,
  letters: readonly DrawnLetter[],
): readonly PlacedLetter[] {
  const { prediction, settings } = candidate;
  const { stations } = prediction;
  const found = discSetUp(place, { settings, stations });
  if (!found) return [];
  const { places } = stationLayout({ stationCount: stations.length, bore_mm: found.bore_mm });
  return letters.flatMap((letter) => {
    const index = (letter.station ?? 1) - 1;
    const [at, trace] = [places[index], stations[index]];
    const draw = Object.hasOwn(PLACES, letter.field) ? PLACES[letter.field] : undefined;
    if (!at || !trace || !draw) return [];
    const { set_mm, reached_mm } = trace;
    const boreBefore_mm = places[index - 1]?.bore_mm ?? at.bore_mm;
    return [{ letter, ...draw({ ...at, face_mm: -found.height_mm, set_mm, reached_mm, boreBefore_mm }) }];
  });
}
