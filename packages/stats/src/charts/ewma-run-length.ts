import { requireWithin } from '#elementary';
import { ewmaSteadyRunLength, ewmaVaryingLimitsRunLength } from './ewma-forward.kernel.ts';
import { ewmaMeanRunLength } from './ewma-mean-run-length.kernel.ts';

export interface EwmaRunLengthInput {
  /** Weight of the newest value. */
  readonly lambda: number;
  /** Width of the limits in standard deviations of the average. */
  readonly limitFactor: number;
  /** Shift of the mean in standard deviations of the plotted value. */
  readonly shift: number;
  /** Limits of final width from the start on, or widening with the variance of the average; left out: constant. */
  readonly limits?: 'constant' | 'time-varying';
  /** A new chart, or one that has run in control for long; steady goes with constant limits; left out: fresh. */
  readonly start?: 'fresh' | 'steady';
}

/**
 * Mean run length of a two-sided EWMA chart, by integral equation.
 *
 * @param input - lambda 0.01 to 1; limitFactor 0.05 to 6; shift -10 to 10; for start steady the limits count as constant
 * @returns mean number of points from the shift to the signal; the shift is there from the first point
 * @throws StatsError "not-finite", "out-of-range"
 * @source S. V. Crowder, Technometrics 29 (1987) 401-407 (from memory); see the kernels
 * @validity normal independent values, target and sigma known; relative error below 1e-7 up to run lengths of 1e7
 */
export function ewmaRunLength(input: EwmaRunLengthInput): number {
  const { lambda, limitFactor, shift, limits = 'constant', start = 'fresh' } = input;
  requireWithin({ lambda }, { min: 0.01, max: 1 });
  requireWithin({ limitFactor }, { min: 0.05, max: 6 });
  requireWithin({ shift }, { min: -10, max: 10 });
  const point = { lambda, limitFactor, shift };
  if (start === 'steady') return ewmaSteadyRunLength(point);
  return limits === 'constant' ? ewmaMeanRunLength(point) : ewmaVaryingLimitsRunLength(point);
}
