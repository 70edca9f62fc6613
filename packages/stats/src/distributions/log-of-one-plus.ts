import { log } from '#elementary';

/**
 * Natural logarithm of 1 + x, accurate for small x: the quotient takes back the rounding of 1 + x.
 *
 * @param x - above -1
 * @returns ln(1 + x)
 * @throws nothing
 * @source W. Kahan, as told in the HP-15C handbook
 * @validity relative error below 1e-15
 */
export function logOfOnePlus(x: number): number {
  const sum = 1 + x;
  return sum === 1 ? x : (log(sum) * x) / (sum - 1);
}
