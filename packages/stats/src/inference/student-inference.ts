import { studentQuantile, studentSurvival } from '#distributions';
import { requireWithin } from '#elementary';

/** An estimate with its standard error, the value it is tested against, and the confidence of its interval. */
interface Estimate {
  readonly estimate: number;
  readonly standardError: number;
  readonly degreesOfFreedom: number;
  readonly reference: number;
  readonly confidence: number;
}

/** A two-sided t test and the interval that goes with it; `low` and `high` in the unit of the estimate. */
export interface StudentInference {
  readonly statistic: number;
  readonly degreesOfFreedom: number;
  readonly pValue: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Two-sided t test of an estimate and its confidence interval.
 *
 * @param estimate - standardError above 0; degreesOfFreedom above 0; confidence above 0 and below 1
 * @returns statistic, degrees of freedom, p value, limits
 * @throws StatsError "not-finite", "out-of-range" (a standard error of 0 included: nothing can be tested)
 * @source Student (1908), Biometrika 6, 1-25
 */
export function studentInference(estimate: Estimate): StudentInference {
  const { standardError, degreesOfFreedom, reference, confidence } = estimate;
  requireWithin({ reference });
  requireWithin({ standardError }, { above: 0 });
  requireWithin({ confidence }, { above: 0, below: 1 });
  const statistic = (estimate.estimate - reference) / standardError;
  const pValue = 2 * studentSurvival({ x: Math.abs(statistic), degreesOfFreedom });
  const reach = standardError * studentQuantile({ p: 0.5 * (1 - confidence), degreesOfFreedom, tail: 'upper' });
  return {
    statistic,
    degreesOfFreedom,
    pValue,
    low: estimate.estimate - reach,
    high: estimate.estimate + reach,
  };
}
