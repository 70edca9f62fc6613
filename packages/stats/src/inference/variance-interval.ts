import { chiSquareQuantile } from '#distributions';
import { requireWithin } from '#elementary';

/**
 * Two-sided confidence interval of a variance from normal values.
 *
 * @param estimate - variance: from 0; degreesOfFreedom: 0.01 to 1e9; confidence: above 0 and below 1
 * @returns limits of the variance, in squares of the unit of the data
 * @throws StatsError "not-finite", "out-of-range"
 * @source ISO 2854:1976, table G (from memory); NIST/SEMATECH e-Handbook 7.2.3 (from memory)
 * @validity normal values; sensitive to heavy tails
 */
export function varianceInterval(estimate: {
  readonly variance: number;
  readonly degreesOfFreedom: number;
  readonly confidence?: number;
}): { low: number; high: number } {
  const { variance, degreesOfFreedom, confidence = 0.95 } = estimate;
  requireWithin({ variance }, { min: 0 });
  requireWithin({ confidence }, { above: 0, below: 1 });
  const sum = variance * degreesOfFreedom;
  const p = 0.5 * (1 - confidence);
  return {
    low: sum / chiSquareQuantile({ p, degreesOfFreedom, tail: 'upper' }),
    high: sum / chiSquareQuantile({ p, degreesOfFreedom }),
  };
}
