import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { measured } from './child.mjs';
import { elsewhere, ratios, requireAgreement } from './elsewhere.mjs';
import { workFolder } from './printed-task.mjs';

const LINES = 99_000;
const BORES = 120;

/**
 * Reading a table of bore, stroke and weight (task `csv`). The plain parsers of C and NumPy take digits and commas on trust;
 * here each line is kept as it came and judged (units, decimal commas, totals, places), with the reason when it is struck.
 */
export function round() {
  const folder = join(workFolder(), 'weights');
  mkdirSync(folder, { recursive: true });
  const path = join(folder, 't6.csv');
  writeFileSync(path, lines().join(''));
  const there = elsewhere('csv', { folder });
  const { first, page, all, sum, read } = measured(new URL('./measured/read-weights.mjs', import.meta.url), [path]);
  if (read !== LINES) throw new Error(`read-weights: ${read} weights read of ${LINES} lines`);
  requireAgreement('read-weights', { there, expected: sum, within: 1e-8 * sum });
  return [
    { figure: '10 000 lines, first call', unit: 'ms', ...first },
    { figure: '10 000 lines, warm', unit: 'ms', ...page },
    { figure: '99 000 lines, warm', unit: 'ms', ...all, ...ratios(all.cpu_ms, there) },
  ];
}

/** Weights that look like those of a run: 500 mg give or take 25, two decimals. */
function lines() {
  return Array.from({ length: LINES }, (_, i) => {
    const weight_mg = 475 + ((i * 2654435761) % 5001) / 100;
    return `${(i % BORES) + 1},${Math.floor(i / BORES) + 1},${weight_mg.toFixed(2)}\n`;
  });
}
