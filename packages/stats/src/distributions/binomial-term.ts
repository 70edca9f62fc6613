import { exp, log } from '#elementary';
import { devianceTerm } from './deviance-term.ts';
import { logOfOnePlus } from './log-of-one-plus.ts';
import { stirlingError } from './stirling-error.ts';

/** Successes and failures, whole or not, and the probabilities of one of each, which make 1. */
export interface BinomialPoint {
  readonly successes: number;
  readonly failures: number;
  readonly p: number;
  readonly q: number;
}

/**
 * Gamma(a + b + 1) / (Gamma(a + 1) Gamma(b + 1)) p^a q^b for real a and b: the binomial probability, and the first factor of
 * the beta tails.
 *
 * @param point - a and b from 0, p + q = 1
 * @returns the term
 * @throws nothing
 * @source C. Loader (2000), saddle-point form
 * @validity relative error below 1e-13
 */
export function binomialTerm({ successes: a, failures: b, p, q }: BinomialPoint): number {
  if (a === 0) return b === 0 ? 1 : powerOf(q, { exponent: b, other: p });
  if (b === 0) return powerOf(p, { exponent: a, other: q });
  const n = a + b;
  const exponent =
    stirlingError(n) - stirlingError(a) - stirlingError(b) - devianceTerm(a, n * p) - devianceTerm(b, n * q);
  return exp(exponent) * Math.sqrt(n / (2 * Math.PI * a) / b);
}

/** base^exponent; a base near 1 by its distance from 1. */
function powerOf(base: number, { exponent, other }: { exponent: number; other: number }): number {
  return exp(exponent * (other < 0.5 ? logOfOnePlus(-other) : log(base)));
}
