import { requireWithin } from '#elementary';
import type { HypergeometricPoint } from './hypergeometric-pmf.ts';
import { hypergeometricTails } from './hypergeometric-tails.ts';
import type { Tail } from './tail.ts';
import { wholeQuantile } from './whole-quantile.ts';

/** A hypergeometric law and a probability, counted from the lower tail unless said otherwise. */
interface HypergeometricProbability extends Omit<HypergeometricPoint, 'k'> {
  readonly p: number;
  readonly tail?: Tail;
}

/**
 * Quantile of the hypergeometric law.
 *
 * @param input - p: above 0 and below 1; lotSize: whole, 1 to 1e9; defectiveCount, sampleSize: whole, 0 to lotSize
 * @returns least k with P(X <= k) >= p, or with P(X > k) <= p for the upper tail
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source definition
 * @validity see `wholeQuantile`
 */
export function hypergeometricQuantile({ p, tail = 'lower', ...law }: HypergeometricProbability): number {
  requireWithin({ p }, { above: 0, below: 1 });
  hypergeometricTails({ k: 0, ...law });
  return wholeQuantile({
    tailsAt: (k) => hypergeometricTails({ k, ...law }),
    ...{ p, tail },
    least: Math.max(0, law.sampleSize + law.defectiveCount - law.lotSize),
    greatest: Math.min(law.sampleSize, law.defectiveCount),
  });
}
