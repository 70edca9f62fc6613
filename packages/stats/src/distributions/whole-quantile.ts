import { requireWithin } from '#elementary';
import type { Tail, Tails } from './tail.ts';

/** A law on whole numbers by its tails, and the probability looked for. */
interface WholeLaw {
  readonly tailsAt: (k: number) => Tails;
  readonly p: number;
  readonly tail: Tail;
  /** Least value of the law, and its greatest, or Infinity. */
  readonly least: number;
  readonly greatest: number;
}

/** A probability that misses by less than this share is taken as reached: 1/2 is 1/2 for a fair coin thrown three times. */
const GUARD = 1e-13;

/**
 * Quantile of a law on whole numbers.
 *
 * @param law - tails, p above 0 and below 1, the range of the law
 * @returns least k with P(X <= k) >= p, or with P(X > k) <= p for the upper tail
 * @throws StatsError "not-finite", "out-of-range"
 * @source definition; bisection
 * @validity exact but for probabilities within 1e-13 of p, which count as equal
 */
export function wholeQuantile({ tailsAt, p, tail, least, greatest }: WholeLaw): number {
  requireWithin({ p }, { above: 0, below: 1 });
  const isReached = (k: number): boolean =>
    tail === 'lower' ? tailsAt(k).lower >= p * (1 - GUARD) : tailsAt(k).upper <= p * (1 + GUARD);
  let low = least - 1;
  let high = least;
  for (let step = 1; high < greatest && !isReached(high); step *= 2) {
    low = high;
    high = Math.min(greatest, high + step);
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (isReached(middle)) high = middle;
    else low = middle;
  }
  return high;
}
