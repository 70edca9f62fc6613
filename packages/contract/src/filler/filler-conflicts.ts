import type { InputFault } from '@fillwright/engine/catalogue';
import { conflictAt, fieldOf, rangeConflicts } from '#faults';
import { itemsAt, meanAt, repeatsIn, textAt, valueAt } from '#written';

const MACHINE = ['pins', 'machineRange'];
const VALIDATED = ['pins', 'validatedRange'];

/**
 * Everything in a filler that contradicts something else in it. Works on data of any form.
 *
 * @param raw - a filler of any form
 * @returns the conflicts
 */
export function fillerConflicts(raw: unknown): readonly InputFault[] {
  return [
    ...layoutConflicts(raw),
    ...scaleConflicts(raw),
    ...rangeConflicts(raw, [MACHINE, VALIDATED]),
    ...validatedConflicts(raw),
    ...speedConflicts(raw),
    ...partConflicts(raw),
  ];
}

/** Every column feeds a bore of its own, and every bore is fed. */
function layoutConflicts(raw: unknown): readonly InputFault[] {
  const boreCount = meanAt(raw, ['carriers', 'boreCount']);
  const columnCount = meanAt(raw, ['disc', 'columnCount']);
  if (boreCount === undefined || columnCount === undefined) return [];
  const path = ['disc', 'boreOfColumn'];
  if (valueAt(raw, path) === undefined)
    return columnCount === boreCount
      ? []
      : [conflictAt('bores-not-mapped', ['disc', 'columnCount'], { columnCount, boreCount })];
  const bores = itemsAt(raw, path);
  const isOneToOne =
    bores.length === columnCount &&
    new Set(bores).size === boreCount &&
    bores.every((bore) => typeof bore === 'number' && Number.isInteger(bore) && bore >= 1 && bore <= boreCount);
  return isOneToOne && columnCount === boreCount
    ? []
    : [conflictAt('map-not-one-to-one', path, { columnCount, boreCount })];
}

function scaleConflicts(raw: unknown): readonly InputFault[] {
  const stations = itemsAt(raw, ['pins', 'scales']).map((scale) => meanAt(scale, ['station']));
  const wrong = stations.findIndex((station, index) => station !== undefined && station !== index + 1);
  const order =
    wrong < 0
      ? []
      : [
          conflictAt('stations-out-of-order', ['pins', 'scales', wrong, 'station'], {
            station: stations[wrong] ?? 0,
            expected: wrong + 1,
          }),
        ];
  const path = ['pins', 'zeroDiscHeight_mm'];
  const isAsked = textAt(raw, ['pins', 'referredTo']) === 'base' && valueAt(raw, path) === undefined;
  return isAsked
    ? [
        ...order,
        {
          code: 'missing',
          field: fieldOf(path),
          allowed:
            'the measured height of the disc at the zero check, in mm, because the pins are referred to the base',
        },
      ]
    : order;
}

function validatedConflicts(raw: unknown): readonly InputFault[] {
  const end = (path: readonly string[], key: string): EndOfRange => meanAt(raw, [...path, key]);
  const [low_mm, high_mm] = [end(VALIDATED, 'min_mm'), end(VALIDATED, 'max_mm')];
  const [min_mm, max_mm] = [end(MACHINE, 'min_mm'), end(MACHINE, 'max_mm')];
  if (low_mm === undefined || high_mm === undefined || min_mm === undefined || max_mm === undefined) return [];
  // A range that is upside down is said by itself.
  if (min_mm > max_mm || low_mm > high_mm || (low_mm >= min_mm && high_mm <= max_mm)) return [];
  return [conflictAt('validated-outside-machine', VALIDATED, { low_mm, high_mm, min_mm, max_mm })];
}

/** An end of a range in the unit of its key, mm. */
type EndOfRange = number | undefined;

function speedConflicts(raw: unknown): readonly InputFault[] {
  const [slowest, usual, fastest] = ['slowest', 'usual', 'fastest'].map((name) =>
    meanAt(raw, ['speed', `${name}_strokes_per_min`]),
  );
  if (slowest === undefined || usual === undefined || fastest === undefined) return [];
  if (slowest <= usual && usual <= fastest) return [];
  return [conflictAt('speeds-out-of-order', ['speed', 'usual_strokes_per_min'], { slowest, usual, fastest })];
}

function partConflicts(raw: unknown): readonly InputFault[] {
  const parts = itemsAt(raw, ['parts']);
  const numbers = repeatsIn(parts.map((part) => textAt(part, ['number']))).map(({ name, index }) =>
    conflictAt('part-number-twice', ['parts', index, 'number'], { number: name }),
  );
  const mounted = repeatsIn(
    parts.map((part) => (valueAt(part, ['mounted']) === true ? textAt(part, ['kind']) : undefined)),
  ).map(({ name, index, firstIndex }) =>
    conflictAt('mounted-twice', ['parts', index, 'mounted'], {
      kind: name,
      first: textAt(parts[firstIndex], ['number']) ?? `part ${firstIndex}`,
    }),
  );
  return [...numbers, ...mounted];
}
