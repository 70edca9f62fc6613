import { exp, requireWithin } from '#elementary';
import { gammaTails } from './gamma-tails.ts';
import { scaledNormalTail } from './scaled-normal-tail.ts';

const TWO_BY_PI = 0.6366197723675814;
/** Up to these the sums below are used: neither under- nor overflow, and few terms. */
const FARTHEST = 2800;
const MOST_SUMMED = 1000;

/** A chi-square law and a point on it. */
export interface ChiSquareInput {
  readonly x: number;
  readonly degreesOfFreedom: number;
}

/**
 * Lower and upper tail of the chi-square law. The smaller one keeps its relative accuracy, the other is its complement.
 *
 * A whole number of degrees of freedom up to 1000 is summed from positive terms:
 * lower: (x/2)^(k/2) exp(-x/2) / Gamma(k/2 + 1) times the series 1 + x/(k+2) + x^2/((k+2)(k+4)) + ...
 * upper: exp(-x/2) or the normal tail of sqrt(x), plus the same first factor for k-2, k-4, ...
 * Everything else is a gamma law of shape k/2 at x/2.
 *
 * @param input - x: finite; degreesOfFreedom: 0.01 to 1e9, whole or not
 * @returns probabilities of a value up to x and above x
 * @throws StatsError "not-finite", "out-of-range"
 * @source Abramowitz, Stegun (1964) 26.4.4 to 26.4.6; 26.4.19
 * @validity relative error of the smaller one below 2e-14 for whole degrees of freedom up to 1000, else below 1e-12
 */
export function chiSquareTails({ x, degreesOfFreedom }: ChiSquareInput): { lower: number; upper: number } {
  requireWithin({ x });
  requireWithin({ degreesOfFreedom }, { min: 0.01, max: 1e9 });
  if (x <= 0) return { lower: 0, upper: 1 };
  if (x > FARTHEST || degreesOfFreedom > MOST_SUMMED || !Number.isInteger(degreesOfFreedom))
    return gammaTails({ x: 0.5 * x, shape: 0.5 * degreesOfFreedom });
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
