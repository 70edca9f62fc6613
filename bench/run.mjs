/**
 * `npm run bench -- [name ...] [--json] [--write [--date 2026-03-02]]`: every benchmark, or those that are named, in three
 * interleaved rounds, medians of them. `--json` prints an object a line instead of the table, `--write` puts the table into
 * bench/RESULTS.md. Times depend on the machine; compare ratios.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { format } from 'prettier';
import { setUp } from '../tools/setup.mjs';
import { median } from './clock.mjs';
import { whyNotInC } from './in-c.mjs';
import { versionOfNumPy, whyNotInNumPy } from './in-numpy.mjs';
import { machine, objects, table } from './report.mjs';

const NAMES = [
  'design-search',
  'dosage-units-pass',
  'acceptance-table',
  'two-stage-simulation',
  'arl-design',
  'normals',
  'words',
  'read-weights',
  'design-process',
  'set-up-idle',
  'start-up',
  'durable-versions',
  'lever-to-paint',
  'first-load',
];
const ROUNDS = 3;

const options = {
  json: { type: 'boolean', default: false },
  write: { type: 'boolean', default: false },
  date: { type: 'string' },
};
const { values, positionals } = parseArgs({ options, allowPositionals: true });
const unknown = positionals.filter((name) => !NAMES.includes(name));
if (unknown.length > 0) {
  console.error(`no benchmark called ${unknown.join(', ')}; there are: ${NAMES.join(', ')}`);
  process.exit(2);
}
if (!setUp()) process.exit(3);

const missing = { C: whyNotInC(), NumPy: whyNotInNumPy() };
for (const [language, why] of Object.entries(missing))
  if (why !== undefined) console.error(`no ratio to ${language}: ${why}`);
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
console.log(values.json ? objects(rows, missing).join('\n') : shown);
if (values.write) writeFileSync('bench/RESULTS.md', shown);

/** Medians over the rounds; a ratio is formed inside its round first. */
function medians(ofRounds) {
  const keys = ['wall_ms', 'cpu_ms', 'size_kB', 'ratioToC', 'ratioToNumPy'].filter(
    (key) => ofRounds[0][key] !== undefined,
  );
  return Object.fromEntries(keys.map((key) => [key, median(ofRounds.map((row) => row[key]))]));
}

function notes() {
  const versions = ['C (gcc -O3, one thread)', versionOfNumPy()].filter(
    (version, i) => Object.values(missing)[i] === undefined,
  );
  return [
    'Medians of three interleaved rounds. CPU time is that of all threads of the process. The aim of a whole process or a ' +
      'first call is its wall time, that of a warm kernel its CPU time.',
    ...(versions.length === 0
      ? []
      : [
          `Ratios: CPU time against that of ${versions.join(' and ')} in the same round; the results that they print agree ` +
            'with those here, which each round checks.',
        ]),
    ...Object.entries(missing).flatMap(([language, why]) =>
      why === undefined ? [] : [`No ratio to ${language}: ${why}.`],
    ),
  ];
}
