import type { StudentizedRangePoint } from './studentized-range-tail.ts';
import { studentizedRangeTail } from './studentized-range-tail.ts';

/**
 * Probability of a value above x, accurate when small: range of several normal values over an independent estimate of their sd.
 *
 * @param point - x: any finite number; groupCount: whole, 2 to 1000; degreesOfFreedom: 1 to 1e9, whole or not
 * @returns probability of a value above x, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source H. O. Hartley (1942), Biometrika 32, 334-348 (definition)
 * @validity absolute error below 1e-10, relative error below 1e-8; for the other side use `studentizedRangeCdf`
 */
export function studentizedRangeSurvival(point: StudentizedRangePoint): number {
  return studentizedRangeTail(point, 'upper');
}
