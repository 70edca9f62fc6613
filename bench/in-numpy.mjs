import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { printedTask, workFolder } from './printed-task.mjs';

const PROGRAM = fileURLToPath(new URL('./baselines/py/bench.py', import.meta.url));
const VERSIONS = 'import numpy, scipy; print("NumPy", numpy.__version__ + ", SciPy", scipy.__version__)';

let found;

/** Why nothing can be compared with NumPy here; undefined when it can. */
export function whyNotInNumPy() {
  return python() === undefined ? 'there is no python3 with NumPy and SciPy' : undefined;
}

/** For example `NumPy 1.24.2, SciPy 1.10.1`. */
export function versionOfNumPy() {
  return python()?.versions;
}

/** A task of the NumPy program: time of one run, ms (its own median), and the value that it prints. */
export function taskInNumPy(task, { repeats = 5, folder = workFolder() } = {}) {
  return printedTask(python().path, [PROGRAM, task, repeats, folder]);
}

/** The system's python3 first: one of a version manager often has no packages. */
function python() {
  found ??= { one: firstWithNumPy(['/usr/bin', ...(process.env.PATH ?? '').split(delimiter)]) };
  return found.one;
}

function firstWithNumPy(folders) {
  for (const path of new Set(folders.map((folder) => join(folder, 'python3')))) {
    if (!existsSync(path)) continue;
    const { status, stdout } = spawnSync(path, ['-c', VERSIONS], { encoding: 'utf8' });
    if (status === 0) return { path, versions: stdout.trim() };
  }
  return undefined;
}
