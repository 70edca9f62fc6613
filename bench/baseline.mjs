import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { output } from './child.mjs';

/** C versions of the same computations. */
const SOURCES = fileURLToPath(new URL('./baselines/c', import.meta.url));
// -Wno-psabi: wide vectors on a processor without them are split, which the compiler remarks at every function.
const FLAGS = '-O3 -march=native -mprefer-vector-width=512 -fno-math-errno -fno-tree-slp-vectorize -Wno-psabi'.split(
  ' ',
);
const COMPILER = 'gcc';

let folder;

/** Why no ratio to C can be given here; undefined when it can. */
export function whyNoBaseline() {
  if (spawnSync(COMPILER, ['--version']).status !== 0) return `there is no C compiler (${COMPILER})`;
  return undefined;
}

/** Wall and CPU time of one run of a task of the C program, ms (its own median of 21). */
export function baseline(task) {
  const program = built('bench', { file: join(SOURCES, 'bench.c') });
  const [, , wall_ms, cpu_ms] = output(program, [COMPILER, task, '21', folder])
    .stdout.trim()
    .split('\n')[0]
    .split('\t');
  return { wall_ms: Number(wall_ms), cpu_ms: Number(cpu_ms) };
}

/** Lines that a small C program on the same kernels prints. */
export function baselineLines(name, text) {
  return output(built(name, { text }), []).stdout.trim().split('\n');
}

function built(name, { file, text }) {
  folder ??= temporaryFolder();
  const program = join(folder, name);
  if (existsSync(program)) return program;
  const source = file ?? join(folder, `${name}.c`);
  if (text !== undefined) writeFileSync(source, text);
  output(COMPILER, [...FLAGS, `-I${SOURCES}`, source, '-lm', '-o', program]);
  return program;
}

function temporaryFolder() {
  const path = mkdtempSync(join(tmpdir(), 'bench-'));
  process.on('exit', () => rmSync(path, { recursive: true, force: true }));
  return path;
}
