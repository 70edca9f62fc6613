import { measured } from './child.mjs';
import { elsewhere, ratios, requireAgreement } from './elsewhere.mjs';

const MEANS = 301;
/** A limit from the contour differs from one by direct search by at most so much. */
const PER_LIMIT = 2.1e-5;

/**
 * Acceptance limits at 301 sample means by the exact probability: the first table (contour and rays), each further one, and
 * what a slider asks for in a frame. C and NumPy search each limit (task `t2`), for the first table and for each further one.
 */
export function round() {
  const there = elsewhere('t2', { repeats: 5 });
  const found = measured(new URL('./measured/acceptance-table.mjs', import.meta.url));
  const { first, warm, further, frame, sum } = found;
  requireAgreement('acceptance-table', { there, expected: sum, within: MEANS * PER_LIMIT });
  const against = ({ cpu_ms }) => ratios(cpu_ms, there);
  return [
    { figure: 'first call', unit: 'ms', ...first },
    { figure: 'first table, warm', unit: 'ms', ...warm, aim: { kind: 'cpu', limit: 40 }, ...against(warm) },
    { figure: 'each further table', unit: 'ms', ...further, aim: { kind: 'cpu', limit: 1 }, ...against(further) },
    { figure: 'new coverage and five n', unit: 'ms', ...frame, aim: { kind: 'cpu', ambitious: 1000 / 60 } },
  ];
}
