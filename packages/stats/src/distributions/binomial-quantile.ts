import { requireWhole, requireWithin } from '#elementary';
import { binomialTails } from './binomial-tails.ts';
import type { Tail } from './tail.ts';
import { wholeQuantile } from './whole-quantile.ts';

/**
 * Quantile of the binomial law. The probability asked for is `probability`, since p belongs to the law.
 *
 * @param input - probability: above 0 and below 1, counted from `tail` (lower unless given); n: whole, 0 to 1e9; p: 0 to 1
 * @returns least k with P(X <= k) >= probability, or with P(X > k) <= probability for the upper tail
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source definition
 * @validity see `wholeQuantile`
 */
export function binomialQuantile(input: {
  readonly probability: number;
  readonly n: number;
  readonly p: number;
  readonly tail?: Tail;
}): number {
  const { probability, n, p, tail = 'lower' } = input;
  requireWithin({ probability }, { above: 0, below: 1 });
  requireWhole({ n }, { min: 0, max: 1e9 });
  requireWithin({ p }, { min: 0, max: 1 });
  return wholeQuantile({
    tailsAt: (k) => binomialTails({ k, n, p }),
    p: probability,
    tail,
    least: 0,
    greatest: n,
  });
}
