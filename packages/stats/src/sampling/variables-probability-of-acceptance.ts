import { noncentralStudentSurvival, normalQuantile, normalSurvival } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';

/** A plan by variables: accepted when (limit - mean) / sd >= k, towards the one specification limit. */
export interface VariablesPlan {
  readonly n: number;
  readonly k: number;
  /** known: the standard deviation of the process; unknown: that of the sample, n - 1 form. */
  readonly sd: 'known' | 'unknown';
}

/**
 * Operating characteristic of the k method, one specification limit, normal values.
 *
 * @param plan - n (from 2 when the sd is unknown), k, sd known or not; quality: fraction beyond the limit, above 0, below 1
 * @returns probability to accept
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source N. L. Johnson, B. L. Welch (1940), Biometrika 31, 362-389: P(t' >= k sqrt n), n - 1 degrees of freedom, noncentrality z sqrt n
 * @validity independent normal values; a skewed quantity has another fraction beyond the limit than its mean and sd say
 */
export function variablesProbabilityOfAcceptance(plan: VariablesPlan & { readonly quality: number }): number {
  const { n, k, sd, quality } = plan;
  requireWhole({ n }, { min: sd === 'known' ? 1 : 2, max: 1e6 });
  requireWithin({ k }, { min: -100, max: 100 });
  requireWithin({ quality }, { above: 0, below: 1 });
  const root = Math.sqrt(n);
  const z = -normalQuantile(quality);
  if (sd === 'known') return normalSurvival(root * (k - z));
  return noncentralStudentSurvival({ x: root * k, degreesOfFreedom: n - 1, noncentrality: root * z });
}
