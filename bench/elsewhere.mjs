import { taskInC, whyNotInC } from './in-c.mjs';
import { taskInNumPy, whyNotInNumPy } from './in-numpy.mjs';

/**
 * A task of baselines/ in C and in NumPy, one right after the other.
 *
 * @param task - name of the task there
 * @param how - `repeats` in C where 21 take too long; `folder` of its input
 * @returns time and printed value of each language that can run here
 */
export function elsewhere(task, { repeats, folder } = {}) {
  return {
    ...(whyNotInC() === undefined ? { C: taskInC(task, { repeats, folder }) } : {}),
    ...(whyNotInNumPy() === undefined ? { NumPy: taskInNumPy(task, { folder }) } : {}),
  };
}

/**
 * Ratios of CPU time.
 *
 * @param here - CPU time here of what one run of the task does, ms
 * @param there - what `elsewhere` returned
 */
export function ratios(cpu_ms, { C, NumPy }) {
  return {
    ...(C === undefined ? {} : { ratioToC: cpu_ms / C.cpu_ms }),
    ...(NumPy === undefined ? {} : { ratioToNumPy: cpu_ms / NumPy.cpu_ms }),
  };
}

/** Throws when a language printed something else: a faster wrong answer is none. `of` makes the comparable number. */
export function requireAgreement(task, { there, expected, within, of = (value) => value }) {
  for (const [language, { value }] of Object.entries(there))
    if (!(Math.abs(of(value) - expected) <= within))
      throw new Error(`${task}: ${of(value)} in ${language}, ${expected} expected, more than ${within} apart`);
}
