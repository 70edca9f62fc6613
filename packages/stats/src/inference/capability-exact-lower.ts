import { noncentralStudentCdf } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';
import { bracketedRoot } from '#numerics';

/**
 * Exact lower confidence bound of a one-sided capability index, from the noncentral t law.
 *
 * @param input - n: whole, 2 to 1e6; index: estimate (limit - mean)/(3 sd), -50 to 50; confidence: above 0 and below 1
 * @returns the bound
 * @throws StatsError "not-finite", "out-of-range" (too large for n as well), "not-whole"
 * @source D. B. Owen (1968), Technometrics 10, 445-478 (from memory): P(T(n - 1, 3 sqrt n c) <= 3 sqrt n C) = confidence
 * @validity normal values, one limit; absolute error below 1e-9
 */
export function capabilityExactLower(input: {
  readonly n: number;
  readonly index: number;
  readonly confidence?: number;
}): number {
  const { n, index, confidence = 0.95 } = input;
  requireWhole({ n }, { min: 2, max: 1e6 });
  requireWithin({ index }, { min: -50, max: 50 });
  requireWithin({ confidence }, { above: 0, below: 1 });
  const scale = 3 * Math.sqrt(n);
  const x = scale * index;
  const degreesOfFreedom = n - 1;
  const reach = 40 * (1 + Math.abs(x) / Math.sqrt(degreesOfFreedom));
  const edges = { from: x - reach, to: x + reach };
  requireWithin(edges, { min: -1e4, max: 1e4 });
  const rising = (noncentrality: number): number =>
    confidence - noncentralStudentCdf({ x, degreesOfFreedom, noncentrality });
  return bracketedRoot(rising, { ...edges, tolerance: 1e-11 * reach }) / scale;
}
