import type { StudentPoint } from './student-tails.ts';
import { studentTails } from './student-tails.ts';

/**
 * Probability of a value above x, accurate when small: Student t law.
 *
 * @param point - x: any finite number; degreesOfFreedom: 0.01 to 1e9, whole or not
 * @returns probability of a value above x, 0 to 1
 * @throws StatsError "not-finite", "out-of-range"
 * @source Abramowitz, Stegun (1964) 26.5.27; beyond 1e8 scale lengths the power law of the tail
 * @validity relative error below 1e-12 where the probability is the smaller one; for the other side use `studentCdf`
 */
export function studentSurvival(point: StudentPoint): number {
  return studentTails(point).upper;
}
