import { exp } from '#elementary';
import { devianceTerm } from './deviance-term.ts';
import { stirlingError } from './stirling-error.ts';

/**
 * mean^x exp(-mean) / Gamma(x + 1) for any real x: the Poisson probability, and the first factor of the gamma tails.
 *
 * @param x - from 0
 * @param mean - from 0
 * @returns the term
 * @throws nothing
 * @source C. Loader (2000), saddle-point form
 * @validity relative error below 1e-13
 */
export function poissonTerm(x: number, mean: number): number {
  if (x === 0) return exp(-mean);
  if (mean === 0) return 0;
  return exp(-stirlingError(x) - devianceTerm(x, mean)) / Math.sqrt(2 * Math.PI * x);
}
