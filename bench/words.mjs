import { measured } from './child.mjs';
import { elsewhere, ratios, requireAgreement } from './elsewhere.mjs';

const COUNT = 1e7;
/** Words in the printed sum: all of them in C, the first of each block of 100 000 in NumPy. */
const SUMMED = { C: COUNT, NumPy: COUNT / 1e5 };
const [MEAN, SD] = [2 ** 31, 2 ** 32 / Math.sqrt(12)];

/** Ten million 32-bit words, in blocks here; C sums upper halves of 64-bit words, NumPy fills arrays (task `rngu`). */
export function round() {
  const there = elsewhere('rngu');
  const { warm, sum, count } = measured(new URL('./measured/words.mjs', import.meta.url));
  const all = { ...there, TypeScript: { value: sum } };
  for (const [language, task] of Object.entries(all)) {
    const summed = SUMMED[language] ?? count;
    const of = (value) => (value - MEAN * summed) / (SD * Math.sqrt(summed));
    requireAgreement('words', { there: { [language]: task }, expected: 0, within: 5, of });
  }
  return [{ figure: 'warm, per word', unit: 'ns', ...warm, ...ratios(warm.cpu_ms * COUNT, there) }];
}
