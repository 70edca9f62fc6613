import { measured } from './child.mjs';
import { elsewhere, ratios, requireAgreement } from './elsewhere.mjs';

const COUNT = 1e7;
/** Numbers in the printed sum: all of them in C, the first of each block of 100 000 in NumPy. */
const SUMMED = { C: COUNT, NumPy: COUNT / 1e5 };
/** A mean of normal numbers is farther from 0 once in 1.7 million. */
const FARTHEST_SDS = 5;

/** Ten million standard normal numbers: two 32-bit words each here, one 64-bit word in C and NumPy (task `rngn`). */
export function round() {
  const there = elsewhere('rngn');
  const { warm, mean, count } = measured(new URL('./measured/normals.mjs', import.meta.url));
  for (const [language, task] of Object.entries(there))
    requireAgreement('normals', {
      ...{ there: { [language]: task }, expected: 0, within: FARTHEST_SDS },
      of: (sum) => sum / Math.sqrt(SUMMED[language]),
    });
  requireAgreement('normals', { there: { TypeScript: { value: mean * Math.sqrt(count) } }, expected: 0, within: 5 });
  const aim = { kind: 'cpu', limit: 2, ratioToC: 1.7, ambitious: 1.5 };
  return [{ figure: 'warm, per number', unit: 'ns', ...warm, aim, ...ratios(warm.cpu_ms * COUNT, there) }];
}
