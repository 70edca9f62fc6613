import { requireWhole, requireWithin } from '#elementary';
import { chiAverage } from './chi-average.ts';
import { rangeTail } from './range-tail.ts';
import type { Tail } from './tail.ts';

/** Law of the studentised range and a point on it. */
export interface StudentizedRangePoint {
  readonly x: number;
  readonly groupCount: number;
  readonly degreesOfFreedom: number;
}

/**
 * One tail of the studentised range: the mean over S of the tail of the range at x S.
 *
 * @param point - x: finite; groupCount: whole, 2 to 1000; degreesOfFreedom: 1 to 1e9
 * @param tail - lower: P(Q <= x); upper: P(Q > x)
 * @returns the probability
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source H. O. Hartley (1942), Biometrika 32, 334-348 (definition)
 * @validity absolute error below 1e-10, relative error below 1e-8
 */
export function studentizedRangeTail(point: StudentizedRangePoint, tail: Tail): number {
  const { x, groupCount, degreesOfFreedom } = point;
  requireWithin({ x });
  requireWhole({ groupCount }, { min: 2, max: 1000 });
  requireWithin({ degreesOfFreedom }, { min: 1, max: 1e9 });
  if (x <= 0) return tail === 'lower' ? 0 : 1;
  const ofRange = rangeTail(groupCount);
  return Math.min(1, chiAverage({ degreesOfFreedom, of: (s) => ofRange(x * s, tail) }));
}
