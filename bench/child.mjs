import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { median } from './clock.mjs';

/** What a file of `measured/` prints, run in a fresh Node process. */
export function measured(url, args = []) {
  return JSON.parse(output(process.execPath, [fileURLToPath(url), ...args]).stdout);
}

/** Median wall time of 7 runs of a whole process, ms. */
export function wallOfProcess(command, args) {
  return median(
    Array.from({ length: 7 }, () => {
      const begun = performance.now();
      output(command, args);
      return performance.now() - begun;
    }),
  );
}

/** Output of a process that ends well; anything else is an error. */
export function output(command, args) {
  const { status, stdout, stderr, error } = spawnSync(command, args, { encoding: 'utf8', maxBuffer: 1e8 });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}: ${error?.message ?? stderr}`);
  return { stdout, stderr };
}
