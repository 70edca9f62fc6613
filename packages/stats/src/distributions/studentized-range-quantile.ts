import { requireWhole, requireWithin } from '#elementary';
import { scoreQuantile } from './score-quantile.ts';
import { studentizedRangeTail } from './studentized-range-tail.ts';
import type { Tail } from './tail.ts';

/**
 * Quantile of the studentised range.
 *
 * @param input - p: above 0 and below 1, counted from `tail` (lower unless given); groupCount: whole, 2 to 1000;
 *   degreesOfFreedom: 1 to 1e9, whole or not
 * @returns x with P(Q <= x) = p, or P(Q > x) = p for the upper tail
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source inverse of `studentizedRangeTail`
 * @validity relative error below 1e-8
 */
export function studentizedRangeQuantile(input: {
  readonly p: number;
  readonly groupCount: number;
  readonly degreesOfFreedom: number;
  readonly tail?: Tail;
}): number {
  const { p, groupCount, degreesOfFreedom, tail = 'lower' } = input;
  requireWithin({ p }, { above: 0, below: 1 });
  requireWhole({ groupCount }, { min: 2, max: 1000 });
  requireWithin({ degreesOfFreedom }, { min: 1, max: 1e9 });
  return scoreQuantile({
    tailAt: (x, side) => studentizedRangeTail({ x, groupCount, degreesOfFreedom }, side),
    ...{ p, tail, start: 3, step: 1 },
  });
}
