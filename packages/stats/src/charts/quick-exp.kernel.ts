import { pow } from '#elementary';

const STEPS = 64;
const PER_STEP = STEPS / Math.LN2;
/** ln 2 / 64 in two parts: the first has 32 bits, so that its multiples are exact; ln 2 less its double is 2.32e-17. */
const STEP_HIGH = 0.01083042469326756;
const STEP_LOW = Math.LN2 / STEPS - STEP_HIGH + 2.3190468138462996e-17 / STEPS;
const LOWEST = -700;
const FRACTIONS = Float64Array.from({ length: STEPS }, (_, i) => pow(2, i / STEPS));
const POWERS = Float64Array.from({ length: 2047 }, (_, i) => pow(2, i - 1023));

/**
 * Exponential function for hot loops: 2^(k/64) from a table times a polynomial of the rest.
 *
 * @param x - number up to 700
 * @returns e to the power x; 0 below -700
 * @throws nothing; the caller keeps x below 700
 * @source P. T. P. Tang, ACM Trans. Math. Softw. 15 (1989) 144-157 (table of 2^(j/32) and polynomial; from memory)
 * @validity relative error below 1e-15
 */
export function quickExp(x: number): number {
  if (!(x > LOWEST)) return 0;
  const k = Math.floor(x * PER_STEP + 0.5) | 0;
  const r = x - k * STEP_HIGH - k * STEP_LOW;
  const rest = 1 + r * (1 + r * (0.5 + r * (1 / 6 + r * (1 / 24 + r * (1 / 120)))));
  return FRACTIONS[k & (STEPS - 1)]! * POWERS[(k >> 6) + 1023]! * rest;
}
