import os from 'node:os';

const PER_MS = { ms: 1, us: 1e3, ns: 1e6 };
const HEAD = ['benchmark', 'figure', 'wall', 'CPU', 'size', 'aim', 'to C', 'to NumPy', 'verdict'];

/** One line about where and when. */
export function machine(date) {
  const cores = os.cpus();
  const where = `${cores.length} cores, ${cores[0]?.model.trim() ?? 'unknown processor'}, Node ${process.version}`;
  return date === undefined ? `${where}.` : `${date}; ${where}.`;
}

/** The rows as a Markdown table. */
export function table(rows) {
  const body = rows.map((row) => {
    const found = inUnit(row);
    const shown = (value) => (value === undefined ? '-' : `${digits(value)} ${row.unit}`);
    const ratios = [row.ratioToC, row.ratioToNumPy].map((ratio) => (ratio === undefined ? '-' : digits(ratio)));
    return [
      ...[row.name, row.figure, shown(found.wall), shown(found.cpu), shown(found.size)],
      ...[aimed(row), ...ratios, verdict(row)],
    ];
  });
  return [HEAD, HEAD.map(() => '---'), ...body].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}

/**
 * The rows for a program, an object a line. The value is what the aim is about; without an aim CPU time, else wall time or size.
 *
 * @param missing - why there is no version of a language here
 */
export function objects(rows, missing) {
  return rows.map((row) => {
    const found = inUnit(row);
    const value = row.aim === undefined ? (found.cpu ?? found.wall ?? found.size) : found[row.aim.kind];
    const { ratioToC = null, ratioToNumPy = null } = row;
    const reasons = Object.entries({ C: ratioToC, NumPy: ratioToNumPy })
      .filter(([, ratio]) => ratio === null)
      .map(([language]) => missing[language] ?? `there is no ${language} version of this task`);
    const object = { task: `${row.name}: ${row.figure}`, value, unit: row.unit, ratioToC, ratioToNumPy };
    return JSON.stringify(reasons.length === 0 ? object : { ...object, noRatio: reasons.join('; ') });
  });
}

function aimed({ aim, unit }) {
  if (aim === undefined) return '-';
  const { kind, limit, ratioToC, ambitious } = aim;
  const parts = [
    ...(limit === undefined ? [] : [`${kind} at most ${limit} ${unit}`]),
    ...(ratioToC === undefined ? [] : [`${ratioToC} x C`]),
    ...(ambitious === undefined ? [] : [`ambitious ${digits(ambitious)} ${unit}`]),
  ];
  return parts.join(', ');
}

/** A missing ratio is no ratio that was met. */
function verdict(row) {
  if (row.aim === undefined) return '-';
  const { kind, limit, ratioToC, ambitious } = row.aim;
  const value = inUnit(row)[kind];
  const said = (isMet) => (isMet ? 'met' : 'not met');
  const ofRatio = row.ratioToC === undefined ? 'cannot tell' : said(row.ratioToC <= ratioToC);
  const parts = [
    ...(limit === undefined ? [] : [said(value <= limit)]),
    ...(ratioToC === undefined ? [] : [`ratio ${ofRatio}`]),
    ...(ambitious === undefined ? [] : [`ambitious ${said(value <= ambitious)}`]),
  ];
  return parts.join(', ');
}

function inUnit({ wall_ms, cpu_ms, size_kB, unit }) {
  const time = (time_ms) => (time_ms === undefined ? undefined : time_ms * PER_MS[unit]);
  return { wall: time(wall_ms), cpu: time(cpu_ms), size: size_kB };
}

/** Three figures that count. */
function digits(value) {
  return String(Number(value.toPrecision(3)));
}
