import type { NoncentralStudentPoint } from './noncentral-student-tail.ts';
import { noncentralStudentTail } from './noncentral-student-tail.ts';

/**
 * Probability of a value above x, accurate when small: noncentral t law, that of (Z + noncentrality) / S.
 *
 * @param point - x: any finite number; degreesOfFreedom: 1 to 1e9, whole or not; noncentrality: -1e4 to 1e4
 * @returns probability of a value above x, 0 to 1
 * @throws StatsError "not-finite", "out-of-range"
 * @source N. L. Johnson, B. L. Welch (1940), Biometrika 31, 362-389 (definition)
 * @validity relative error below 1e-10 down to 1e-250; for the other side use `noncentralStudentCdf`
 */
export function noncentralStudentSurvival(point: NoncentralStudentPoint): number {
  return noncentralStudentTail(point, 'upper');
}
