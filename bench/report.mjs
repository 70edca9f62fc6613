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
  const head = ['benchmark', 'figure', 'wall', 'CPU', 'aim', 'ratio to C', 'verdict'];
  const body = rows.map((row) => [row.name, row.figure, ...numbers(row)]);
  return [head, head.map(() => '---'), ...body].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}

function numbers({ unit, wall_ms, cpu_ms, aim, ratio }) {
  const time = (ms) => (ms === undefined ? '-' : `${digits(ms * PER_MS[unit])} ${unit}`);
  const cells = [time(wall_ms), time(cpu_ms)];
  const perC = ratio === undefined ? '-' : digits(ratio);
  if (aim === undefined) return [...cells, '-', perC, '-'];
  const { kind, limit, ambitious } = aim;
  const found = (kind === 'cpu' ? cpu_ms : wall_ms) * PER_MS[unit];
  const wish = ambitious === undefined ? '' : `, ambitious ${ambitious}`;
  return [...cells, `${kind} at most ${limit} ${unit}${wish}`, perC, found <= limit ? 'met' : 'not met'];
}

/** Three figures that count. */
function digits(value) {
  return String(Number(value.toPrecision(3)));
}
