import { requireWhole, requireWithin } from '#elementary';
import { betaTails } from './beta-tails.ts';
import type { Tails } from './tail.ts';

/** A binomial law and a count: k of n, each with probability p. */
export interface BinomialPoint {
  readonly k: number;
  readonly n: number;
  readonly p: number;
}

/**
 * Both tails of the binomial law.
 *
 * @param point - k: whole; n: whole, 0 to 1e9; p: 0 to 1
 * @returns probabilities of a count up to k and above k
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source Abramowitz, Stegun (1964) 26.5.24
 * @validity relative error of the smaller tail below 1e-12
 */
export function binomialTails({ k, n, p }: BinomialPoint): Tails {
  requireWhole({ k });
  requireWhole({ n }, { min: 0, max: 1e9 });
  requireWithin({ p }, { min: 0, max: 1 });
  if (k < 0) return { lower: 0, upper: 1 };
  if (k >= n) return { lower: 1, upper: 0 };
  const { lower, upper } = betaTails({ x: p, y: 1 - p, alpha: k + 1, beta: n - k });
  return { lower: upper, upper: lower };
}
