import { requireWithin } from '#elementary';

export interface IntegralAdjustment {
  /** 1 - theta of the disturbance; 0: pure noise around a fixed level. */
  readonly lambda: number;
  /** Share of each deviation that is taken back. */
  readonly correction: number;
}

/**
 * Variance around the target when a constant share of every deviation is taken back, in units of the squared forecast error.
 *
 * ratio = 1 + (G - lambda)^2 / (G (2 - G)); least, 1, at G = lambda; 2 / (2 - G) on pure noise, so that full correction
 * doubles the variance of a process that needs none.
 *
 * @param input - lambda 0 to 1; correction above 0, below 2 (from 2 on the loop is not stable)
 * @returns variance divided by that of the forecast error
 * @throws StatsError "not-finite", "out-of-range"
 * @source e_t = (1 - (1 - lambda) B) / (1 - (1 - G) B) a_t; G. E. P. Box, A. Luceno (1997) (from memory)
 * @validity disturbance IMA(0,1,1), no delay, gain of the process known
 */
export function integralAdjustmentRatio({ lambda, correction }: IntegralAdjustment): number {
  requireWithin({ lambda }, { min: 0, max: 1 });
  requireWithin({ correction }, { above: 0, below: 2 });
  const miss = correction - lambda;
  return 1 + (miss * miss) / (correction * (2 - correction));
}
