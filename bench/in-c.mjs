import { spawnSync } from 'node:child_process';
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { output } from './child.mjs';
import { printedTask, workFolder } from './printed-task.mjs';

const SOURCES = fileURLToPath(new URL('./baselines/c', import.meta.url));
// -Wno-psabi: wide vectors on a processor without them are split, which the compiler remarks at every function.
const FLAGS = '-O3 -march=native -mprefer-vector-width=512 -fno-math-errno -fno-tree-slp-vectorize -Wno-psabi'.split(
  ' ',
);
const COMPILER = 'gcc';

let missing;

/** Why nothing can be compared with C here; undefined when it can. */
export function whyNotInC() {
  missing ??= {
    why: spawnSync(COMPILER, ['--version']).status === 0 ? undefined : `there is no C compiler (${COMPILER})`,
  };
  return missing.why;
}

/** A task of the C program: time of one run, ms (its own median), and the value that it prints. */
export function taskInC(task, { repeats = 21, folder = workFolder() } = {}) {
  return printedTask(built('bench', { file: join(SOURCES, 'bench.c') }), [COMPILER, task, repeats, folder]);
}

/** Lines that a small C program on the same kernels prints. */
export function linesInC(name, text) {
  return output(built(name, { text }), []).stdout.trim().split('\n');
}

function built(name, { file, text }) {
  const program = join(workFolder(), name);
  if (existsSync(program)) return program;
  const source = file ?? join(workFolder(), `${name}.c`);
  if (text !== undefined) writeFileSync(source, text);
  output(COMPILER, [...FLAGS, `-I${SOURCES}`, source, '-lm', '-o', program]);
  return program;
}
