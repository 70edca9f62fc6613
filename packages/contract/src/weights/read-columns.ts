import type { WeightsFault } from '@fillwright/engine/weights';
import type { ColumnHeading, ColumnName } from './column-heading.ts';
import { massIn_mg } from './mass-in-mg.ts';
import { parsedCell } from './parsed-cell.ts';
import { parsedRow, type ColumnNumber, type ParsedRow, type Roles } from './parsed-row.ts';
import type { RowRead, RowsRead } from './row-read.ts';
import type { TableOfLines } from './table-of-lines.ts';
import { unitOfColumn } from './unit-of-column.ts';
import type { MassUnit, WeightBasis, WeightsText } from './weights-read.ts';

const PLACES = ['group', 'column', 'carrier', 'bore', 'stroke'] as const;

type Headings = NonNullable<TableOfLines['headings']>;
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
  const columnsOfMass = { parsed, headings, roles, given };
  const { units, faults: unitFaults, written } = unitsOfBoth(columnsOfMass);
  return {
    rows: parsed.map((row, i) => ({ line: i + 1, raw: table.lines[i]!, read: inMilligrams(row, units) })),
    faults: [...faults, ...unitFaults],
    basis: roles.basis,
    ignoredColumns: columns.flatMap(({ name, written: text }) => (name === undefined && text !== '' ? [text] : [])),
    ...(written ? { unit: written } : {}),
  };
}

/** Capsules and shells may bear different units; a column without takes that of the other. */
function unitsOfBoth(at: UnitPlace): {
  readonly units: { readonly mass: MassUnit; readonly shell: MassUnit };
  readonly faults: readonly WeightsFault[];
  readonly written: MassUnit | undefined;
} {
  const found = { mass: unitAt('mass', at), shell: unitAt('shell', at) };
  const sound = [found.mass, found.shell].flatMap((each) => ('code' in each ? [] : [each]));
  const written = sound.find(({ isWritten }) => isWritten)?.unit;
  const isUsed = (which: 'mass' | 'shell'): boolean => at.parsed.some((row) => row.kind === 'row' && row[which]);
  const faults = (['mass', 'shell'] as const).flatMap((which) => {
    const unit = found[which];
    const isWrong = 'code' in unit && isUsed(which) && !(unit.code === 'unit-missing' && written !== undefined);
    return isWrong ? [unit] : [];
  });
  const unitOf = (which: 'mass' | 'shell'): MassUnit => {
    const unit = found[which];
    return 'code' in unit ? (written ?? 'mg') : unit.isWritten ? unit.unit : (written ?? unit.unit);
  };
  return { units: { mass: unitOf('mass'), shell: unitOf('shell') }, faults: faults.slice(0, 1), written };
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

function beforeRows(line: string, isHeading: boolean): Extract<ParsedRow, { kind: 'struck' }> {
  if (isHeading) return { kind: 'struck', reason: 'heading', value: undefined, mayBeWeight: false };
  const cell = parsedCell(line, { unit: undefined, isAfterFirst: false });
  return cell.kind === 'struck' ? cell : { kind: 'struck', reason: 'not-clear', value: line.trim(), mayBeWeight: true };
}

interface UnitPlace {
  readonly parsed: readonly ParsedRow[];
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

function inMilligrams(row: ParsedRow, units: { readonly mass: MassUnit; readonly shell: MassUnit }): RowRead['read'] {
  if (row.kind === 'struck') return row;
  const mass_mg = row.mass && massIn_mg(row.mass.text, units.mass);
  const shell_mg = row.shell && massIn_mg(row.shell.text, units.shell);
  return { kind: 'row', mass_mg, shell_mg, place: row.place, time: row.time };
}
