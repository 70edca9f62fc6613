import { requireWhole, requireWithin } from '#elementary';
import type { PoissonPoint } from './poisson-tails.ts';
import { poissonTerm } from './poisson-term.ts';

/**
 * Probability of exactly k: Poisson law.
 *
 * @param point - k: whole; mean: 0 to 1e9
 * @returns probability, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source C. Loader (2000), Fast and accurate computation of binomial probabilities
 * @validity relative error below 1e-13
 */
export function poissonPmf({ k, mean }: PoissonPoint): number {
  requireWhole({ k });
  requireWithin({ mean }, { min: 0, max: 1e9 });
  return k < 0 ? 0 : poissonTerm(k, mean);
}
