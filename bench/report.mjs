import os from 'node:os';

const PER_MS = { ms: 1, us: 1e3, ns: 1e6 };

/** One line about where and when. */
export function machine(date) {
  const cores = os.cpus();
  const where = `${cores.length} cores, ${cores[0]?.model.trim() ?? 'unknown processor'}, Node ${process.version}`;
  return date === undefined ? `${where}.` : `${date}; ${where}.`;
}

/** The rows as a Markdown table. */
export function table(rows) {
  const head = ['benchmark', 'figure', 'wall', 'CPU', 'size', 'aim', 'ratio to C', 'verdict'];
  const body = rows.map((row) => [row.name, row.figure, ...numbers(row)]);
  return [head, head.map(() => '---'), ...body].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}

function numbers(row) {
  const { unit, aim, ratio } = row;
  const shown = (value) => (value === undefined ? '-' : `${digits(value)} ${unit}`);
  const found = { wall: inUnit(row.wall_ms, unit), cpu: inUnit(row.cpu_ms, unit), size: row.size_kB };
  const cells = Object.values(found).map(shown);
  const perC = ratio === undefined ? '-' : digits(ratio);
  if (aim === undefined) return [...cells, '-', perC, '-'];
  const { kind, limit, ambitious } = aim;
  const wish = ambitious === undefined ? '' : `, ambitious ${ambitious}`;
  return [...cells, `${kind} at most ${limit} ${unit}${wish}`, perC, found[kind] <= limit ? 'met' : 'not met'];
}

function inUnit(time_ms, unit) {
  return time_ms === undefined ? undefined : time_ms * PER_MS[unit];
}

/** Three figures that count. */
function digits(value) {
  return String(Number(value.toPrecision(3)));
}
