import type { WeighedCapsule, WeightsFault } from '@fillwright/engine/weights';
import { readColumns } from './read-columns.ts';
import { readLines } from './read-lines.ts';
import { tableOfLines } from './table-of-lines.ts';
import { columnFaults } from './column-faults.ts';
import { withoutTotals } from './without-totals.ts';
import type { WeightsLine, WeightsRead, WeightsText } from './weights-read.ts';
import type { RowRead, RowsRead } from './row-read.ts';

/** Lines of the longest text that is read. */
const MOST_LINES = 100_000;
/** Under half or over twice the median: read, and pointed at. */
const FAR_RATIO = 2;

/**
 * Reads weights as typed or pasted: each line is a weight, a shell, or struck with its reason, and keeps its text.
 *
 * @param given - the text, and what the person says about it
 * @returns lines, capsules and shells in mg; `faults` where the text as a whole cannot be judged
 */
export function readWeights(given: WeightsText): WeightsRead {
  const table = tableOfLines(given.text);
  if (table.lines.length > MOST_LINES)
    return refused(given, { code: 'too-many-lines', facts: { found: table.lines.length, allowed: MOST_LINES } });
  const { headings } = table;
  const rows = headings ? readColumns(table, headings, given) : readLines(table, given);
  return assembled(given, rows);
}

function refused({ basis = 'gross' }: WeightsText, fault: WeightsFault): WeightsRead {
  return { lines: [], faults: [fault], capsules: [], shells_mg: [], basis, unreadCount: 0, ignoredColumns: [] };
}

function assembled(given: WeightsText, rows: RowsRead): WeightsRead {
  const { basis, unit, ignoredColumns } = rows;
  const lines = withoutTotals(rows.rows);
  const isOwn = given.shells === undefined ? hasOwnShells(lines) : given.shells === 'own';
  const capsules = lines.flatMap((row) => capsuleOf(row, isOwn));
  const shells_mg = lines.flatMap(({ read }) => {
    const isSpare = read.kind === 'row' && read.shell_mg !== undefined && !(isOwn && read.mass_mg !== undefined);
    return isSpare ? [read.shell_mg] : [];
  });
  const placed = withPlaces(capsules, given);
  const faults = [...rows.faults, ...placed.faults, ...columnFaults(lines, given.shells === 'own')];
  const isSound = faults.length === 0 && capsules.length + shells_mg.length > 0;
  if (faults.length === 0 && !isSound) faults.push({ code: 'no-weights' });
  const read = linesOf(lines);
  return {
    ...{ lines: read, faults, basis, ignoredColumns, ...(unit === undefined ? {} : { unit }) },
    capsules: isSound ? placed.capsules : [],
    shells_mg: isSound ? shells_mg : [],
    unreadCount: read.filter((line) => line.kind === 'struck' && line.mayBeWeight).length,
  };
}

function capsuleOf({ line, read }: RowRead, isOwn: boolean): WeighedCapsule[] {
  if (read.kind === 'struck' || read.mass_mg === undefined) return [];
  const { mass_mg, shell_mg, place, time } = read;
  const capsule: { -readonly [key in keyof WeighedCapsule]: WeighedCapsule[key] } = { mass_mg, line };
  if (isOwn && shell_mg !== undefined) capsule.shell_mg = shell_mg;
  if (place) capsule.place = place;
  if (time !== undefined) capsule.time = time;
  return [capsule];
}

function linesOf(rows: readonly RowRead[]): WeightsLine[] {
  const far = { mass: farRange(rows, 'mass_mg'), shell: farRange(rows, 'shell_mg') };
  let index = 0;
  return rows.map(({ line, raw, read }): WeightsLine => {
    if (read.kind === 'struck') {
      const { reason, mayBeWeight, value } = read;
      return { kind: 'struck', line, raw, reason, mayBeWeight, ...(value === undefined ? {} : { value }) };
    }
    const { mass_mg, shell_mg = NaN } = read;
    if (mass_mg === undefined)
      return { kind: 'shell', line, raw, mass_mg: shell_mg, isFar: isOutside(shell_mg, far.shell) };
    return { kind: 'weight', line, raw, index: index++, mass_mg, isFar: isOutside(mass_mg, far.mass) };
  });
}

/** A second column holds each capsule's own shell when every capsule has one and no shell stands alone. */
function hasOwnShells(rows: readonly RowRead[]): boolean {
  return rows.every(
    ({ read }) => read.kind === 'struck' || (read.mass_mg === undefined) === (read.shell_mg === undefined),
  );
}

interface Range_mg {
  readonly low_mg: number;
  readonly high_mg: number;
}

function farRange(rows: readonly RowRead[], key: 'mass_mg' | 'shell_mg'): Range_mg {
  const masses: number[] = [];
  for (const { read } of rows) if (read.kind === 'row' && read[key] !== undefined) masses.push(read[key]);
  const median_mg = Float64Array.from(masses).sort()[masses.length >> 1] ?? 0;
  return { low_mg: median_mg / FAR_RATIO, high_mg: median_mg * FAR_RATIO };
}

function isOutside(mass_mg: number, { low_mg, high_mg }: Range_mg): boolean {
  return mass_mg < low_mg || mass_mg > high_mg;
}

/** Places by order, group after group, when the person says that it is one revolution and no column says places. */
function withPlaces(
  capsules: readonly WeighedCapsule[],
  { wheel }: WeightsText,
): { readonly capsules: readonly WeighedCapsule[]; readonly faults: readonly WeightsFault[] } {
  if (!wheel || capsules.some(({ place }) => place !== undefined)) return { capsules, faults: [] };
  const { groupCount, columnCount } = wheel;
  const needed = groupCount * columnCount;
  if (capsules.length !== needed)
    return {
      capsules,
      faults: [{ code: 'not-a-revolution', facts: { found: capsules.length, needed, groupCount, columnCount } }],
    };
  return {
    capsules: capsules.map((capsule, i) => ({
      ...capsule,
      place: { group: Math.floor(i / columnCount) + 1, column: (i % columnCount) + 1 },
    })),
    faults: [],
  };
}
