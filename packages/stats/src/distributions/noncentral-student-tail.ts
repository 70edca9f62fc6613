import { requireWithin } from '#elementary';
import { chiAverage } from './chi-average.ts';
import { normalCdf } from './normal-cdf.ts';
import { studentTails } from './student-tails.ts';
import type { Tail } from './tail.ts';

/** A noncentral t law, that of (Z + noncentrality) / S, and a point on it. */
export interface NoncentralStudentPoint {
  readonly x: number;
  readonly degreesOfFreedom: number;
  readonly noncentrality: number;
}

/**
 * One tail of the noncentral t law: the mean over S of the normal tail at x S - noncentrality.
 *
 * @param point - x: finite; degreesOfFreedom: 1 to 1e9; noncentrality: -1e4 to 1e4
 * @param tail - lower: P(T <= x); upper: P(T > x)
 * @returns the probability
 * @throws StatsError "not-finite", "out-of-range"
 * @source definition; N. L. Johnson, B. L. Welch (1940), Biometrika 31, 362-389
 * @validity relative error below 1e-10 down to 1e-250
 */
export function noncentralStudentTail(point: NoncentralStudentPoint, tail: Tail): number {
  const { x, degreesOfFreedom, noncentrality } = point;
  requireWithin({ x });
  requireWithin({ degreesOfFreedom }, { min: 1, max: 1e9 });
  requireWithin({ noncentrality }, { min: -1e4, max: 1e4 });
  if (noncentrality === 0) return studentTails({ x, degreesOfFreedom })[tail];
  if (x === 0) return normalCdf(tail === 'lower' ? -noncentrality : noncentrality);
  const sign = tail === 'lower' ? 1 : -1;
  return Math.min(1, chiAverage({ degreesOfFreedom, of: (s) => normalCdf(sign * (x * s - noncentrality)) }));
}
