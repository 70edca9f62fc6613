import type { WeighedPlace } from '@fillwright/engine/weights';
import type { ColumnHeading } from './column-heading.ts';
import { parsedCell, type ParsedCell } from './parsed-cell.ts';
import type { WeightBasis, WeightsText } from './weights-read.ts';

type Struck = Extract<ParsedCell, { kind: 'struck' }>;
type Value = Extract<ParsedCell, { kind: 'value' }>;

/** Where the masses and places stand, from 0. */
export interface Roles {
  readonly mass: ColumnNumber | undefined;
  readonly shell: ColumnNumber | undefined;
  readonly basis: WeightBasis;
  readonly places: readonly (readonly [name: keyof WeighedPlace, column: ColumnNumber])[];
  readonly time: ColumnNumber | undefined;
}

/** Place of a column in a line, from 0: no unit. */
export type ColumnNumber = number;

/** A line taken apart, before its unit is known. */
export type ParsedRow =
  | Struck
  | {
      readonly kind: 'row';
      readonly mass: Value | undefined;
      readonly shell: Value | undefined;
      readonly place: WeighedPlace | undefined;
      readonly time: string | undefined;
    };

interface RowPlace {
  readonly roles: Roles;
  readonly columns: readonly ColumnHeading[];
  readonly given: WeightsText;
}

/**
 * Reads a line under headings.
 *
 * @param cells - its cells
 * @param at - the columns, what they hold, and what the person says
 * @returns masses as written and the place, or the reason for which the line is struck
 */
export function parsedRow(cells: readonly string[], at: RowPlace): ParsedRow {
  const whole = cells.join('  ').trim();
  const odd = oddLine(cells, { whole, columnCount: at.columns.length });
  if (odd) return odd;
  const [mass, shell] = [massAt(at.roles.mass, cells, at), massAt(at.roles.shell, cells, at)];
  if (mass?.kind === 'struck') return mass;
  if (shell?.kind === 'struck' && shell.mayBeWeight) return shell;
  const ownShell = valueOf(shell);
  if (!mass && !ownShell) return struck('no-value');
  const place = placeOf(cells, at.roles);
  if (place === 'not-clear') return struck('place-not-clear', whole);
  return { kind: 'row', mass, shell: ownShell, place, time: timeOf(cells, at.roles) };
}

function timeOf(cells: readonly string[], { time }: Roles): string | undefined {
  const cell = time === undefined ? '' : cells[time];
  return cell === '' ? undefined : cell;
}

function valueOf(cell: ParsedCell | undefined): Value | undefined {
  return cell?.kind === 'value' ? cell : undefined;
}

/** A line that is no row of the table. */
function oddLine(
  cells: readonly string[],
  { whole, columnCount }: { readonly whole: string; readonly columnCount: number },
): Struck | undefined {
  if (whole === '') return struck('blank');
  if (!/\d/.test(whole)) return parsedCell(whole, { unit: undefined, isAfterFirst: true }) as Struck;
  if (cells.some(isSummary)) return struck('total-or-mean');
  return cells.slice(columnCount).some((cell) => cell !== '') ? struck('two-values', whole) : undefined;
}

function massAt(
  column: ColumnNumber | undefined,
  cells: readonly string[],
  { columns, given }: RowPlace,
): ParsedCell | undefined {
  const cell = column === undefined ? '' : (cells[column] ?? '');
  if (cell === '') return undefined;
  return single(parsedCell(cell, { unit: columns[column!]?.unit ?? given.unit, isAfterFirst: true }));
}

/** A cell holds one weight: a number before it is none that counts. */
function single(cell: ParsedCell): ParsedCell {
  if (cell.kind === 'value' && cell.running)
    return struck(cell.running.isLikeThousands ? 'thousands-mark' : 'two-values', `${cell.running.index} ${cell.text}`);
  return cell.kind === 'struck' && cell.reason === 'heading' ? struck('not-clear') : cell;
}

function isSummary(cell: string): boolean {
  if (!/\p{L}/u.test(cell)) return false;
  const read = parsedCell(cell, { unit: undefined, isAfterFirst: true });
  return read.kind === 'struck' && read.reason === 'total-or-mean';
}

function placeOf(cells: readonly string[], { places }: Roles): WeighedPlace | 'not-clear' | undefined {
  const place: Partial<Record<keyof WeighedPlace, number>> = {};
  for (const [name, column] of places) {
    const cell = cells[column] ?? '';
    if (cell === '') continue;
    if (!/^[1-9]\d{0,6}$/.test(cell)) return 'not-clear';
    place[name] = Number(cell);
  }
  return Object.keys(place).length === 0 ? undefined : place;
}

function struck(reason: Struck['reason'], value?: string): Struck {
  const isHarmless = reason === 'blank' || reason === 'total-or-mean' || reason === 'no-value';
  return { kind: 'struck', reason, value, mayBeWeight: !isHarmless };
}
