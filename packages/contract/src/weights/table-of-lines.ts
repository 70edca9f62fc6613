import { columnHeading, type ColumnHeading } from './column-heading.ts';
import { parsedCell } from './parsed-cell.ts';

/** A text by lines and, where it has headings, by columns. */
export interface TableOfLines {
  readonly lines: readonly string[];
  /** Cells of a line. */
  readonly cellsOf: (line: string) => readonly string[];
  /** Left out: no line names columns. */
  readonly headings?: { readonly line: number; readonly columns: readonly ColumnHeading[] };
}

type Splitter = (line: string) => readonly string[];

const byCommas = by(',');

/** Headings stand among the first lines. */
const LAST_HEADING_LINE = 50;
const MASSES: ReadonlySet<string | undefined> = new Set(['gross', 'net', 'shell', 'mass']);

/**
 * Finds out how a text parts its columns: tabs, semicolons, commas (only under headings parted by commas), or blanks.
 *
 * @param text - as pasted or read from a file
 * @returns its lines, the way to take one apart, and the headings
 */
export function tableOfLines(text: string): TableOfLines {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  if (lines.at(-1) === '') lines.pop();
  const splitters = text.includes('\t') ? [by('\t')] : text.includes(';') ? [by(';')] : [byCommas, byBlanks];
  for (const cellsOf of splitters) {
    const headings = headingsOf(lines, cellsOf);
    if (headings) return { lines, cellsOf, headings };
  }
  const cellsOf = splitters.length > 1 ? byBlanks : splitters[0]!;
  return { lines, cellsOf };
}

/** The first line without any digit that names a column of masses; no weight stands before it. */
function headingsOf(lines: readonly string[], cellsOf: Splitter): TableOfLines['headings'] {
  for (const [i, line] of lines.slice(0, LAST_HEADING_LINE).entries()) {
    if (/\d/.test(line)) {
      if (parsedCell(line, { unit: undefined, isAfterFirst: false }).kind === 'value') return undefined;
      continue;
    }
    const columns = columnsOf(line, cellsOf);
    if (columns.some(({ name }) => MASSES.has(name))) return { line: i + 1, columns };
  }
  return undefined;
}

/** The columns that a line names; none where it is no line of headings. */
function columnsOf(line: string, cellsOf: Splitter): readonly ColumnHeading[] {
  const whole = columnHeading(line);
  if (cellsOf === byBlanks && whole.name !== undefined) return [whole];
  const columns = cellsOf(line).map(columnHeading);
  const namedCount = columns.filter(({ name }) => name !== undefined).length;
  // A title may hold a comma or blanks: a single known word among others names no column.
  if (cellsOf === byCommas && namedCount < 2) return [];
  const isLoose = cellsOf === byBlanks && !/ {2,}/.test(line.trim());
  return isLoose ? (namedCount === columns.length ? columns : []) : 2 * namedCount >= columns.length ? columns : [];
}

/** Cells between marks; a cell in quotation marks may hold the mark itself. */
function by(mark: string): Splitter {
  return (line) => {
    if (!line.includes('"')) return line.split(mark).map((cell) => cell.trim());
    const cells = [''];
    let isQuoted = false;
    for (const sign of line) {
      if (sign === '"') isQuoted = !isQuoted;
      else if (sign === mark && !isQuoted) cells.push('');
      else cells.push(`${cells.pop() ?? ''}${sign}`);
    }
    return cells.map((cell) => cell.trim());
  };
}

/** Cells between blanks: two or more where there are such, else one; a unit stays with its number or heading. */
function byBlanks(line: string): readonly string[] {
  const text = line.trim();
  const cells = /\S {2,}\S/.test(text) ? text.split(/ {2,}/) : text.split(' ');
  return cells.reduce<string[]>((kept, cell) => {
    const isUnit = /^[([]?(mg|g)[)\]]?\??$/.test(cell) || /^\?+$/.test(cell);
    if (isUnit && kept.length > 0) kept.push(`${kept.pop() ?? ''} ${cell}`);
    else kept.push(cell);
    return kept;
  }, []);
}
