import type { WeightsFault } from '@fillwright/engine/weights';
import { massIn_mg } from './mass-in-mg.ts';
import { parsedCell, type ParsedCell } from './parsed-cell.ts';
import type { RowRead, RowsRead } from './row-read.ts';
import type { TableOfLines } from './table-of-lines.ts';
import { unitOfColumn } from './unit-of-column.ts';
import type { MassUnit, WeightBasis, WeightsText } from './weights-read.ts';

/**
 * Reads a text without headings of columns: one weight a line, as a balance prints or a sheet's column pastes.
 *
 * @param table - the lines
 * @param given - what the person says about them
 * @returns a row for each line, and what is wrong with the whole
 */
export function readLines({ lines }: TableOfLines, given: WeightsText): RowsRead {
  const cells = withRunningNumbers(parsedLines(lines, given.unit));
  const faults: WeightsFault[] = [];
  const twins = cells.findIndex((cell) => cell.kind === 'struck' && cell.reason === 'two-values');
  if (twins >= 0 && isMostlyTwo(cells))
    faults.push({ code: 'columns-not-clear', line: twins + 1, value: lines[twins]!.trim() });
  const basis = basisOf(cells, given.basis);
  if (typeof basis !== 'string') faults.push(basis);
  const unit = unitOfColumn({ seen: unitsOf(cells), given: given.unit });
  const hasValues = cells.some(({ kind }) => kind === 'value');
  if ('code' in unit && hasValues) faults.push(unit);
  const said = 'code' in unit ? undefined : unit;
  const what = typeof basis === 'string' ? basis : 'gross';
  return {
    rows: cells.map((cell, i) =>
      rowOf(cell, { line: i + 1, raw: lines[i]! }, { basis: what, unit: said?.unit ?? 'mg' }),
    ),
    ...{ faults, basis: what, ignoredColumns: [] },
    ...(said?.isWritten ? { unit: said.unit } : {}),
  };
}

function parsedLines(lines: readonly string[], unit: MassUnit | undefined): ParsedCell[] {
  let isAfterFirst = false;
  return lines.map((line) => {
    const cell = parsedCell(line.replaceAll('"', ''), { unit, isAfterFirst });
    isAfterFirst ||= cell.kind === 'value';
    return cell;
  });
}

/** Whole numbers before the weights that count the lines are no values; others make two values of a line. */
function withRunningNumbers(cells: readonly ParsedCell[]): readonly ParsedCell[] {
  const numbered = cells.flatMap((cell, i) =>
    cell.kind === 'value' && cell.running ? [{ ...cell.running, line: i + 1 }] : [],
  );
  if (numbered.length === 0) return cells;
  const isEnough = numbered.length > 1 || !numbered[0]!.isLikeThousands;
  const isAlone = !cells.some((cell) => cell.kind === 'struck' && cell.reason === 'two-values');
  const valueCount = cells.filter(({ kind }) => kind === 'value').length;
  if (isEnough && isAlone && isCounting(numbered) && 2 * numbered.length >= valueCount) return cells;
  return cells.map((cell) => {
    if (cell.kind !== 'value' || !cell.running) return cell;
    const reason = cell.running.isLikeThousands ? 'thousands-mark' : 'two-values';
    return { kind: 'struck', reason, value: `${cell.running.index} ${cell.text}`, mayBeWeight: true };
  });
}

/** Every number follows the one before by at most the lines between them, or begins again at 1. */
function isCounting(numbered: readonly { readonly index: number; readonly line: number }[]): boolean {
  return numbered.every(({ index, line }, i) => {
    const before = numbered[i - 1];
    return !before || index === 1 || (index > before.index && index - before.index <= line - before.line);
  });
}

function isMostlyTwo(cells: readonly ParsedCell[]): boolean {
  const two = cells.filter((cell) => cell.kind === 'struck' && cell.reason === 'two-values').length;
  return two > cells.filter(({ kind }) => kind === 'value').length;
}

function basisOf(cells: readonly ParsedCell[], given: WeightBasis | undefined): WeightBasis | WeightsFault {
  let found: WeightBasis | undefined;
  for (const [i, cell] of cells.entries()) {
    if (cell.kind !== 'value' || cell.basis === undefined) continue;
    found ??= cell.basis;
    if (cell.basis !== found)
      return { code: 'gross-and-net', line: i + 1, facts: { first: found, second: cell.basis } };
  }
  return found ?? given ?? 'gross';
}

function unitsOf(cells: readonly ParsedCell[]): Map<MassUnit, number> {
  const seen = new Map<MassUnit, number>();
  for (const [i, cell] of cells.entries())
    if (cell.kind === 'value' && cell.unit !== undefined && !seen.has(cell.unit)) seen.set(cell.unit, i + 1);
  return seen;
}

function rowOf(
  cell: ParsedCell,
  place: { readonly line: number; readonly raw: string },
  { basis, unit }: { readonly basis: WeightBasis; readonly unit: MassUnit },
): RowRead {
  const { line, raw } = place;
  if (cell.kind === 'struck') return { line, raw, read: cell };
  const [value_mg, isShell] = [massIn_mg(cell.text, unit), basis === 'shell'];
  const mass_mg = isShell ? undefined : value_mg;
  const shell_mg = isShell ? value_mg : undefined;
  return { line, raw, read: { kind: 'row', mass_mg, shell_mg, place: undefined, time: cell.time } };
}
