import { betaQuantile } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';

/** A count among n, and the confidence of what is said of the proportion. */
export interface CountedShare {
  readonly count: number;
  readonly n: number;
  readonly confidence?: number;
}

/**
 * Exact confidence limits of a proportion; coverage is never below the confidence.
 *
 * @param share - n: whole, 1 to 1e9; count: whole, 0 to n; confidence: above 0 and below 1, 0.95 unless given
 * @returns estimate, two-sided limits, and the one-sided limits at the whole confidence
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source C. J. Clopper, E. S. Pearson (1934), Biometrika 26, 404-413
 */
export function clopperPearsonInterval(share: CountedShare): {
  estimate: number;
  low: number;
  high: number;
  lowerOneSided: number;
  upperOneSided: number;
} {
  const { count, n, confidence = 0.95 } = share;
  requireWhole({ n }, { min: 1, max: 1e9 });
  requireWhole({ count }, { min: 0, max: n });
  requireWithin({ confidence }, { above: 0, below: 1 });
  const lower = (p: number): number => (count === 0 ? 0 : betaQuantile({ p, alpha: count, beta: n - count + 1 }));
  const upper = (p: number): number =>
    count === n ? 1 : betaQuantile({ p, alpha: count + 1, beta: n - count, tail: 'upper' });
  const [half, whole] = [0.5 * (1 - confidence), 1 - confidence];
  return {
    ...{ estimate: count / n, low: lower(half), high: upper(half) },
    ...{ lowerOneSided: lower(whole), upperOneSided: upper(whole) },
  };
}
