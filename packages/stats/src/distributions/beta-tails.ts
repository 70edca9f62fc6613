import { binomialTerm } from './binomial-term.ts';
import { continuedFraction } from './continued-fraction.ts';
import type { Tails } from './tail.ts';

/** A beta law and a point on it, told by its distance from both ends: x + y = 1. */
export interface BetaPoint {
  readonly x: number;
  readonly y: number;
  readonly alpha: number;
  readonly beta: number;
}

/**
 * Both tails of the beta law, and the slope of either against ln(x / y).
 *
 * The continued fraction serves the side of the mean on which it converges fast; the other tail is the complement.
 *
 * @param point - x and y from 0, adding up to 1; alpha, beta above 0; the caller checks them
 * @returns lower, upper, slope = x y times the density
 * @throws nothing
 * @source A. R. DiDonato, A. H. Morris (1992), ACM algorithm 708, continued fraction 9; first factor after Loader (2000)
 * @validity relative error of the smaller tail below 1e-12
 */
export function betaTails({ x, y, alpha, beta }: BetaPoint): Tails & { slope: number } {
  if (x <= 0) return { lower: 0, upper: 1, slope: 0 };
  if (y <= 0) return { lower: 1, upper: 0, slope: 0 };
  const sum = alpha + beta;
  const slope = (binomialTerm({ successes: alpha, failures: beta, p: x, q: y }) / sum) * alpha * beta;
  if (x * (sum + 2) <= alpha + 1) {
    const lower = Math.min(1, slope / fraction({ x, y, alpha, beta }));
    return { lower, upper: 1 - lower, slope };
  }
  const upper = Math.min(1, slope / fraction({ x: y, y: x, alpha: beta, beta: alpha }));
  return { lower: 1 - upper, upper, slope };
}

function fraction({ x, y, alpha: a, beta: b }: BetaPoint): number {
  return continuedFraction({
    first: (a * (a * y - b * x + 1)) / (a + 1),
    step: (m) => {
      const odd = a + 2 * m - 1;
      return {
        a: ((((a + m - 1) * x) / odd) * ((a + b + m - 1) * x * m * (b - m))) / odd,
        b: m + (m * (b - m) * x) / odd + ((a + m) * (a * y - b * x + 1 + m * (1 + y))) / (odd + 2),
      };
    },
  });
}
