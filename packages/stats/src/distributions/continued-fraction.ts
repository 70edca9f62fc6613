/** b0 + a1 / (b1 + a2 / (b2 + ...)). */
interface ContinuedFraction {
  readonly first: number;
  /** a and b of step i, from 1. */
  readonly step: (i: number) => { readonly a: number; readonly b: number };
}

const MOST_STEPS = 1e6;
const TINY = 1e-300;

/**
 * Value of a continued fraction, by Lentz's method.
 *
 * @param fraction - first term b0 and the steps
 * @returns the value, as soon as a step changes nothing
 * @throws nothing
 * @source W. J. Lentz (1976), Appl. Opt. 15, 668-671, with I. J. Thompson's and A. R. Barnett's guard against 0 (1986)
 * @validity to rounding where it converges within 1e6 steps
 */
export function continuedFraction({ first, step }: ContinuedFraction): number {
  let value = nonZero(first);
  let c = value;
  let d = 0;
  for (let i = 1; i < MOST_STEPS; i++) {
    const { a, b } = step(i);
    d = 1 / nonZero(b + a * d);
    c = nonZero(b + a / c);
    const factor = c * d;
    value *= factor;
    if (Math.abs(factor - 1) < 1e-16) break;
  }
  return value;
}

function nonZero(x: number): number {
  return x === 0 ? TINY : x;
}
