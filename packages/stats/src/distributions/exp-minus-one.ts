import { exp, log } from '#elementary';

/**
 * e to the power x, less 1, accurate for small x: the quotient takes back the rounding of the power.
 *
 * @param x - any number up to 700
 * @returns exp(x) - 1
 * @throws nothing
 * @source W. Kahan; N. Higham (2002), Accuracy and Stability of Numerical Algorithms, 1.14.1
 * @validity relative error below 1e-15
 */
export function expMinusOne(x: number): number {
  const power = exp(x);
  if (power === 1) return x;
  const rest = power - 1;
  return Math.abs(x) > 1 ? rest : (rest * x) / log(power);
}
