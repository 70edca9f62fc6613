import { log } from './log.ts';
import { pow } from './pow.ts';

/** log10(e); OEIS A002285 */
const LOG10_E = 0.4342944819032518;

/**
 * Decimal logarithm, built from the natural one; a power of ten from 1e-22 to 1e22 gives its exponent exactly.
 *
 * @param x - any number
 * @returns log10 x; -Infinity for 0, NaN for NaN and below 0
 * @throws nothing
 * @source definition, ln x / ln 10
 * @validity all doubles, relative error below 3e-16 away from x = 1
 */
export function log10(x: number): number {
  const value = log(x) * LOG10_E;
  const whole = Math.round(value);
  return pow(10, whole) === x ? whole : value;
}
