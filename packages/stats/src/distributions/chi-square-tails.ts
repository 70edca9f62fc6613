import { exp } from '#elementary';
import { scaledNormalTail } from './scaled-normal-tail.ts';

const TWO_BY_PI = 0.6366197723675814;
/** Beyond this the upper tail is below 1e-165 for every number of degrees of freedom allowed (1000); it counts as 0. */
const FARTHEST = 2800;

/** A chi-square law and a point on it. */
export interface ChiSquareInput {
  readonly x: number;
  readonly degreesOfFreedom: number;
}

/**
 * Lower and upper tail of the chi-square law with a whole number of degrees of freedom. The smaller one is summed from
 * positive terms and keeps its relative accuracy, the other is its complement.
 *
 * Lower: (x/2)^(k/2) exp(-x/2) / Gamma(k/2 + 1) times the series 1 + x/(k+2) + x^2/((k+2)(k+4)) + ...
 * Upper: exp(-x/2) or the normal tail of sqrt(x), plus the same first factor for k-2, k-4, ...
 *
 * @param input - x: finite; degreesOfFreedom: whole, 1 to 1000; the caller checks both
 * @returns probabilities of a value up to x and above x
 * @throws nothing
 * @source Abramowitz, Stegun (1964) 26.4.4 to 26.4.6
 * @validity relative error of the smaller one below 2e-14
 */
export function chiSquareTails({ x, degreesOfFreedom }: ChiSquareInput): { lower: number; upper: number } {
  if (x <= 0) return { lower: 0, upper: 1 };
  if (x > FARTHEST) return { lower: 1, upper: 0 };
  if (x < degreesOfFreedom) {
    const lower = lowerSeries(x, degreesOfFreedom);
    return { lower, upper: 1 - lower };
  }
  const upper = upperSum(x, degreesOfFreedom);
  return { lower: 1 - upper, upper };
}

// exp(-x/2) is split in two halves, one before and one after summing: neither under- nor overflows below FARTHEST.

function lowerSeries(x: number, degreesOfFreedom: number): number {
  const half = exp(-0.25 * x);
  const isOdd = degreesOfFreedom % 2 === 1;
  let factor = isOdd ? half * Math.sqrt(TWO_BY_PI * x) : half;
  for (let d = isOdd ? 3 : 2; d <= degreesOfFreedom; d += 2) factor *= x / d;
  let sum = 1;
  let term = 1;
  for (let d = degreesOfFreedom + 2; term > 1e-17 * sum; d += 2) {
    term *= x / d;
    sum += term;
  }
  return factor * sum * half;
}

function upperSum(x: number, degreesOfFreedom: number): number {
  const half = exp(-0.25 * x);
  const isOdd = degreesOfFreedom % 2 === 1;
  let sum = isOdd ? 2 * half * scaledNormalTail(Math.sqrt(x)) : half;
  let term = isOdd ? half * Math.sqrt(TWO_BY_PI * x) : half;
  for (let d = isOdd ? 3 : 2; d <= degreesOfFreedom; d += 2) {
    if (isOdd || d > 2) sum += term;
    term *= x / d;
  }
  return sum * half;
}
