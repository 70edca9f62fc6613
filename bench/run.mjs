/**
 * `npm run bench -- [name ...] [--write [--date 2026-03-02]]`: every benchmark in three interleaved rounds, medians of them.
 * `--write` puts the table into bench/RESULTS.md. Times depend on the machine; compare ratios.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { format } from 'prettier';
import { setUp } from '../tools/setup.mjs';
import { whyNoBaseline } from './baseline.mjs';
import { median } from './clock.mjs';
import { machine, table } from './report.mjs';

const NAMES = [
  'design-search',
  'dosage-units-pass',
  'acceptance-table',
  'two-stage-simulation',
  'arl-design',
  'normals',
  'design-process',
  'set-up-idle',
  'start-up',
  'durable-versions',
  'lever-to-paint',
  'first-load',
];
const ROUNDS = 3;

const options = { write: { type: 'boolean', default: false }, date: { type: 'string' } };
const { values, positionals } = parseArgs({ options, allowPositionals: true });
const unknown = positionals.filter((name) => !NAMES.includes(name));
if (unknown.length > 0) {
  console.error(`no benchmark called ${unknown.join(', ')}; there are: ${NAMES.join(', ')}`);
  process.exit(2);
}
if (!setUp()) process.exit(3);

const names = positionals.length > 0 ? positionals : NAMES;
const benchmarks = await Promise.all(names.map(async (name) => ({ name, ...(await import(`./${name}.mjs`)) })));
const rounds = [];
for (let i = 1; i <= ROUNDS; i++) {
  console.error(`round ${i} of ${ROUNDS} ...`);
  const measured = [];
  for (const { name, round } of benchmarks) measured.push(...(await round()).map((row) => ({ name, ...row })));
  rounds.push(measured);
}
const rows = rounds[0].map((row, i) => ({ ...row, ...medians(rounds.map((round) => round[i])) }));
const text = ['# Benchmark results', machine(values.date), table(rows), ...notes()].join('\n\n');
const shown = await format(text, { parser: 'markdown' });
console.log(shown);
if (values.write) writeFileSync('bench/RESULTS.md', shown);

/** Medians over the rounds; a ratio is formed inside its round first. */
function medians(ofRounds) {
  const keys = ['wall_ms', 'cpu_ms', 'size_kB', 'ratio'].filter((key) => ofRounds[0][key] !== undefined);
  return Object.fromEntries(keys.map((key) => [key, median(ofRounds.map((row) => row[key]))]));
}

function notes() {
  const missing = whyNoBaseline();
  return [
    'Medians of three interleaved rounds. CPU time is that of all threads of the process. The aim of a whole process or a ' +
      'first call is its wall time, that of a warm kernel its CPU time.',
    missing === undefined
      ? 'Ratio: CPU time against C (gcc -O3, one thread) in the same round. Both give the same probabilities within 1e-6.'
      : `No ratio to C: ${missing}.`,
  ];
}
