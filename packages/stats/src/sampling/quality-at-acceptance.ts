import { betaQuantile, gammaQuantile } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';
import type { CountingLaw } from './counting-law.ts';

export interface AcceptanceWanted {
  readonly n: number;
  /** Below n for the binomial law: a plan that accepts everything tells no quality. */
  readonly ac: number;
  /** Probability of acceptance. */
  readonly accepted: number;
  readonly law: CountingLaw;
}

/**
 * Quality that a single plan by attributes accepts with a given probability (0.95: producer's point, 0.10: consumer's).
 *
 * @param wanted - plan, probability above 0 and below 1, law
 * @returns nonconforming units, or nonconformities, per unit
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source Abramowitz, Stegun (1964) 26.5.24 (binomial by beta), 26.4.21 (Poisson by gamma)
 */
export function qualityAtAcceptance({ n, ac, accepted, law }: AcceptanceWanted): number {
  requireWhole({ n }, { min: 1, max: 1e6 });
  requireWhole({ ac }, law === 'binomial' ? { min: 0, max: n - 1 } : { min: 0 });
  requireWithin({ accepted }, { above: 0, below: 1 });
  return law === 'binomial'
    ? betaQuantile({ p: accepted, alpha: ac + 1, beta: n - ac, tail: 'upper' })
    : gammaQuantile({ p: accepted, shape: ac + 1, tail: 'upper' }) / n;
}
