import { continuedFraction } from './continued-fraction.ts';
import { poissonTerm } from './poisson-term.ts';
import type { Tails } from './tail.ts';

/** A gamma law of scale 1 and a point on it. */
interface UnitGammaPoint {
  readonly x: number;
  readonly shape: number;
}

/**
 * Both tails of the gamma law of scale 1, and the slope of either against ln x.
 *
 * Below the shape the series for the lower tail, above it the continued fraction for the upper one.
 *
 * @param point - x: any number; shape: above 0; the caller checks them
 * @returns lower, upper, slope = x times the density
 * @throws nothing
 * @source Abramowitz, Stegun (1964) 6.5.29 (series), 6.5.31 (continued fraction, even part)
 * @validity relative error of the smaller tail below 1e-12
 */
export function gammaTails({ x, shape }: UnitGammaPoint): Tails & { slope: number } {
  if (x <= 0) return { lower: 0, upper: 1, slope: 0 };
  if (x === Infinity) return { lower: 1, upper: 0, slope: 0 };
  const term = poissonTerm(shape, x);
  const slope = term * shape;
  if (x < shape || x < 1) {
    const lower = Math.min(1, term * series(x, shape));
    return { lower, upper: 1 - lower, slope };
  }
  const upper = Math.min(1, slope / fraction(x, shape));
  return { lower: 1 - upper, upper, slope };
}

function series(x: number, shape: number): number {
  let sum = 1;
  let term = 1;
  for (let d = shape + 1; term > 1e-17 * sum; d += 1) {
    term *= x / d;
    sum += term;
  }
  return sum;
}

/** x + 1 - a - 1 (1 - a) / (x + 3 - a - 2 (2 - a) / (x + 5 - a - ...)). */
function fraction(x: number, shape: number): number {
  const first = x + 1 - shape;
  return continuedFraction({ first, step: (i) => ({ a: -i * (i - shape), b: first + 2 * i }) });
}
