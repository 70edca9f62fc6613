import { noncentralStudentQuantile, normalQuantile } from '#distributions';
import { requireWithin } from '#elementary';
import type { ToleranceInput } from './tolerance-law.ts';
import { toleranceLaw } from './tolerance-law.ts';

/**
 * Exact factor k of a one-sided tolerance limit of a normal law: mean + k sd, or mean - k sd.
 *
 * @param input - n: whole, 2 to 1e7; content, confidence: above 0 and below 1; degreesOfFreedom of a pooled sd: 1 to 1e7
 * @returns k
 * @throws StatsError "not-finite", "out-of-range" (|z sqrt n| above 1e4 too), "not-whole"
 * @source ISO 16269-6:2014, annex (secondary); D. B. Owen (1968), Technometrics 10, 445-478: noncentral t
 * @validity relative error below 1e-9; normal values
 */
export function oneSidedToleranceFactor(input: ToleranceInput): number {
  const { n, content, confidence, degreesOfFreedom } = toleranceLaw(input);
  const noncentrality = normalQuantile(content) * Math.sqrt(n);
  requireWithin({ noncentrality }, { min: -1e4, max: 1e4 });
  return noncentralStudentQuantile({ p: confidence, degreesOfFreedom, noncentrality }) / Math.sqrt(n);
}
