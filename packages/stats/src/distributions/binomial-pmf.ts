import { requireWhole, requireWithin } from '#elementary';
import type { BinomialPoint } from './binomial-tails.ts';
import { binomialTerm } from './binomial-term.ts';

/**
 * Probability of exactly k of n: binomial law.
 *
 * @param point - k: whole; n: whole, 0 to 1e9; p: 0 to 1
 * @returns probability, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source C. Loader (2000), Fast and accurate computation of binomial probabilities
 * @validity relative error below 1e-13
 */
export function binomialPmf({ k, n, p }: BinomialPoint): number {
  requireWhole({ k });
  requireWhole({ n }, { min: 0, max: 1e9 });
  requireWithin({ p }, { min: 0, max: 1 });
  if (k < 0 || k > n) return 0;
  return binomialTerm({ successes: k, failures: n - k, p, q: 1 - p });
}
