import { studentQuantile } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';

/**
 * Critical value of Grubbs' test for one outlier.
 *
 * @param test - n: whole, 3 to 1e6; significance: above 0 and below 1, 0.05 unless given; sides: 2 (either end, unless given) or 1
 * @returns largest |value - mean| / sd that still counts as ordinary
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source F. E. Grubbs (1969), Technometrics 11, 1-21; NIST/SEMATECH e-Handbook 1.3.5.17.1
 * @validity normal values but for the one
 */
export function grubbsCritical(test: {
  readonly n: number;
  readonly significance?: number;
  readonly sides?: 1 | 2;
}): number {
  const { n, significance = 0.05, sides = 2 } = test;
  requireWhole({ n }, { min: 3, max: 1e6 });
  requireWithin({ significance }, { above: 0, below: 1 });
  const t = studentQuantile({ p: significance / (sides * n), degreesOfFreedom: n - 2, tail: 'upper' });
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt((t * t) / (n - 2 + t * t));
}
