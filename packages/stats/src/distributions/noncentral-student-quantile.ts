import { requireWithin } from '#elementary';
import { noncentralStudentTail } from './noncentral-student-tail.ts';
import { normalQuantile } from './normal-quantile.ts';
import { scoreQuantile } from './score-quantile.ts';
import { studentQuantile } from './student-quantile.ts';
import type { Tail } from './tail.ts';

/**
 * Quantile of the noncentral t law.
 *
 * @param input - p: above 0 and below 1, counted from `tail` (lower unless given); degreesOfFreedom: 1 to 1e9, whole or not;
 *   noncentrality: -1e4 to 1e4
 * @returns x with P(T <= x) = p, or P(T > x) = p for the upper tail
 * @throws StatsError "not-finite", "out-of-range"
 * @source inverse of `noncentralStudentTail`; first guess W. J. Jennett, B. L. Welch (1939), J. R. Statist. Soc. Suppl. 6
 * @validity relative error below 1e-10
 */
export function noncentralStudentQuantile(input: {
  readonly p: number;
  readonly degreesOfFreedom: number;
  readonly noncentrality: number;
  readonly tail?: Tail;
}): number {
  const { p, degreesOfFreedom, noncentrality, tail = 'lower' } = input;
  requireWithin({ p }, { above: 0, below: 1 });
  requireWithin({ degreesOfFreedom }, { min: 1, max: 1e9 });
  requireWithin({ noncentrality }, { min: -1e4, max: 1e4 });
  if (noncentrality === 0) return studentQuantile({ p, degreesOfFreedom, tail });
  const deviate = normalQuantile(p) * (tail === 'lower' ? 1 : -1);
  const spread = Math.sqrt(1 + (0.5 * noncentrality * noncentrality) / degreesOfFreedom);
  return scoreQuantile({
    tailAt: (x, side) => noncentralStudentTail({ x, degreesOfFreedom, noncentrality }, side),
    ...{ p, tail, start: noncentrality + deviate * spread, step: 0.25 * spread },
  });
}
