import type { WeighedPlace } from '@fillwright/engine/weights';
import type { ColumnHeading, ColumnName } from './column-heading.ts';
import { massIn_mg } from './mass-in-mg.ts';
import { parsedCell, type ParsedCell } from './parsed-cell.ts';
import type { RowRead, RowsRead } from './row-read.ts';
import type { TableOfLines } from './table-of-lines.ts';
import { unitOfColumn } from './unit-of-column.ts';
import type { MassUnit, WeightBasis, WeightsFault, WeightsText } from './weights-read.ts';

type Headings = NonNullable<TableOfLines['headings']>;
type Struck = Extract<ParsedCell, { kind: 'struck' }>;
type Value = Extract<ParsedCell, { kind: 'value' }>;

/** Where the masses and places stand, from 0. */
interface Roles {
  readonly mass: ColumnNumber | undefined;
  readonly shell: ColumnNumber | undefined;
  readonly basis: WeightBasis;
  readonly places: readonly (readonly [name: keyof WeighedPlace, column: ColumnNumber])[];
  readonly time: ColumnNumber | undefined;
}

/** Place of a column in a line, from 0: no unit. */
type ColumnNumber = number;

/** A line taken apart, before its unit is known. */
type Parsed =
  | Struck
  | {
      readonly kind: 'row';
      readonly mass?: Value;
      readonly shell?: Value;
      readonly place?: WeighedPlace;
      readonly time?: string;
    };

const PLACES = ['group', 'column', 'carrier', 'bore', 'stroke'] as const;

/**
 * Reads a text whose columns have headings.
 *
 * @param table - the lines and how to take them apart
 * @param headings - the columns
 * @param given - what the person says about them
 * @returns a row for each line, and what is wrong with the whole
 */
export function readColumns(table: TableOfLines, headings: Headings, given: WeightsText): RowsRead {
  const { columns } = headings;
  const faults = headingFaults(headings, given.basis);
  const roles = rolesOf(columns, given.basis);
  const parsed = table.lines.map((line, i) =>
    i + 1 <= headings.line
      ? beforeRows(line, i + 1 === headings.line)
      : parsedRow(table.cellsOf(line), { roles, columns, given }),
  );
  const shellUnit = unitAt('shell', { parsed, headings, roles, given });
  const massUnit = unitAt('mass', { parsed, headings, roles, given });
  const written = [massUnit, shellUnit]
    .flatMap((each) => ('code' in each ? [] : [each]))
    .find(({ isWritten }) => isWritten);
  const used = [
    ...(parsed.some((row) => row.kind === 'row' && row.mass) ? [massUnit] : []),
    ...(parsed.some((row) => row.kind === 'row' && row.shell) ? [shellUnit] : []),
  ];
  const wrong = used.flatMap((each) => ('code' in each && !(each.code === 'unit-missing' && written) ? [each] : []));
  const [unitFault] = wrong;
  const fallback = written?.unit ?? 'mg';
  const units = {
    mass: 'code' in massUnit ? fallback : massUnit.unit,
    shell: 'code' in shellUnit ? fallback : shellUnit.unit,
  };
  return {
    rows: parsed.map((row, i) => ({ line: i + 1, raw: table.lines[i]!, read: inMilligrams(row, units) })),
    faults: [...faults, ...(unitFault ? [unitFault] : [])],
    basis: roles.basis,
    ignoredColumns: columns.flatMap(({ name, written: text }) => (name === undefined && text !== '' ? [text] : [])),
    ...(written ? { unit: written.unit } : {}),
  };
}

function headingFaults({ columns, line }: Headings, basis: WeightBasis | undefined): WeightsFault[] {
  const names = columns.flatMap(({ name }) => (name === undefined || name === 'none' ? [] : [name]));
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  const faults: WeightsFault[] = twice === undefined ? [] : [{ code: 'columns-twice', line, value: twice }];
  const other = columns.find(({ name, otherUnit }) => otherUnit !== undefined && name !== undefined);
  if (other) faults.push({ code: 'unit-not-known', line, value: other.otherUnit! });
  // Gross, shell and net side by side: net is what the sheet made of the two. Gross and net alone hide the tare.
  const isUnclear = names.includes('gross') && names.includes('net') && !names.includes('shell');
  if (isUnclear && basis !== 'net' && basis !== 'gross')
    faults.push({ code: 'gross-and-net', line, facts: { first: 'gross', second: 'net' } });
  return faults;
}

function rolesOf(columns: readonly ColumnHeading[], given: WeightBasis | undefined): Roles {
  const at = (name: ColumnName): ColumnNumber | undefined => {
    const index = columns.findIndex((column) => column.name === name);
    return index < 0 ? undefined : index;
  };
  const [gross, net, plain] = [at('gross'), at('net'), at('mass')];
  const isNet = net !== undefined && (gross === undefined || given === 'net');
  const mass = isNet ? net : (gross ?? (given === 'shell' ? undefined : plain));
  const shell = at('shell') ?? (given === 'shell' ? plain : undefined);
  const basis = isNet ? 'net' : gross !== undefined ? 'gross' : mass === undefined ? 'shell' : (given ?? 'gross');
  const places = PLACES.flatMap((name) => {
    const column = at(name);
    return column === undefined ? [] : [[name, column] as const];
  });
  return { mass, shell, basis, places, time: at('time') };
}

function beforeRows(line: string, isHeading: boolean): Struck {
  if (isHeading) return { kind: 'struck', reason: 'heading', mayBeWeight: false };
  const cell = parsedCell(line, { unit: undefined, isAfterFirst: false });
  return cell.kind === 'struck' ? cell : { kind: 'struck', reason: 'not-clear', value: line.trim(), mayBeWeight: true };
}

interface RowPlace {
  readonly roles: Roles;
  readonly columns: readonly ColumnHeading[];
  readonly given: WeightsText;
}

function parsedRow(cells: readonly string[], { roles, columns, given }: RowPlace): Parsed {
  const whole = cells.filter((cell) => cell !== '').join('  ');
  if (whole === '') return struck('blank');
  if (!/\d/.test(whole)) return parsedCell(whole, { unit: undefined, isAfterFirst: true }) as Struck;
  if (cells.some((cell) => /\p{L}/u.test(cell) && isSummary(cell))) return struck('total-or-mean');
  if (cells.slice(columns.length).some((cell) => cell !== '')) return struck('two-values', whole);
  const read = (column: ColumnNumber | undefined): ParsedCell | undefined => {
    const cell = column === undefined ? '' : (cells[column] ?? '');
    if (cell === '') return undefined;
    return parsedCell(cell, { unit: columns[column!]?.unit ?? given.unit, isAfterFirst: true });
  };
  const [mass, shell] = [single(read(roles.mass)), single(read(roles.shell))];
  if (mass?.kind === 'struck') return mass;
  if (shell?.kind === 'struck' && shell.reason !== 'no-value') return shell;
  const shellRead = shell?.kind === 'value' ? { shell } : {};
  if (!mass && !('shell' in shellRead)) return struck('no-value');
  const place = placeOf(cells, roles);
  if (place === 'not-clear') return struck('place-not-clear', whole);
  const time = roles.time === undefined ? '' : (cells[roles.time] ?? '');
  return { kind: 'row', ...(mass ? { mass } : {}), ...shellRead, ...place, ...(time === '' ? {} : { time }) };
}

/** A cell holds one weight: a number before it is none that counts. */
function single(cell: ParsedCell | undefined): ParsedCell | undefined {
  if (cell?.kind === 'value' && cell.running)
    return struck(cell.running.isLikeThousands ? 'thousands-mark' : 'two-values', `${cell.running.index} ${cell.text}`);
  return cell?.kind === 'struck' && cell.reason === 'heading' ? struck('not-clear') : cell;
}

function isSummary(cell: string): boolean {
  const read = parsedCell(cell, { unit: undefined, isAfterFirst: true });
  return read.kind === 'struck' && read.reason === 'total-or-mean';
}

function placeOf(cells: readonly string[], { places }: Roles): { readonly place?: WeighedPlace } | 'not-clear' {
  const entries: [string, number][] = [];
  for (const [name, column] of places) {
    const cell = cells[column] ?? '';
    if (cell === '') continue;
    if (!/^[1-9]\d{0,6}$/.test(cell)) return 'not-clear';
    entries.push([name, Number(cell)]);
  }
  return entries.length === 0 ? {} : { place: Object.fromEntries(entries) };
}

interface UnitPlace {
  readonly parsed: readonly Parsed[];
  readonly headings: Headings;
  readonly roles: Roles;
  readonly given: WeightsText;
}

function unitAt(
  which: 'mass' | 'shell',
  { parsed, headings, roles, given }: UnitPlace,
): ReturnType<typeof unitOfColumn> {
  const seen = new Map<MassUnit, number>();
  const column = roles[which];
  const heading = column === undefined ? undefined : headings.columns[column]?.unit;
  if (heading !== undefined) seen.set(heading, headings.line);
  for (const [i, row] of parsed.entries()) {
    const unit = row.kind === 'row' ? row[which]?.unit : undefined;
    if (unit !== undefined && !seen.has(unit)) seen.set(unit, i + 1);
  }
  return unitOfColumn({ seen, given: given.unit });
}

function inMilligrams(row: Parsed, units: { readonly mass: MassUnit; readonly shell: MassUnit }): RowRead['read'] {
  if (row.kind === 'struck') return row;
  return {
    kind: 'row',
    ...(row.mass ? { mass_mg: massIn_mg(row.mass.text, units.mass) } : {}),
    ...(row.shell ? { shell_mg: massIn_mg(row.shell.text, units.shell) } : {}),
    ...(row.place ? { place: row.place } : {}),
    ...(row.time === undefined ? {} : { time: row.time }),
  };
}

function struck(reason: Struck['reason'], value?: string): Struck {
  const isHarmless = reason === 'blank' || reason === 'total-or-mean' || reason === 'no-value';
  return { kind: 'struck', reason, ...(value === undefined ? {} : { value }), mayBeWeight: !isHarmless };
}
