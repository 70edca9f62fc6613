import { normalCdf, normalSurvival } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';

export interface ShewhartChart {
  /** Width of the limits in standard deviations of the mean. */
  readonly limitFactor: number;
  readonly subgroupSize: number;
  /** Shift of the mean in standard deviations of single values. */
  readonly shift: number;
}

export interface RunLength {
  readonly mean: number;
  readonly sd: number;
  /** Probability of a signal at one point. */
  readonly signal_frac: number;
}

/**
 * Run length of a chart of means with two limits.
 *
 * @param input - limitFactor above 0, up to 8; subgroupSize 1 or more; shift any
 * @returns mean and standard deviation of the number of points up to the signal, probability of a signal at a point
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source geometric law: mean 1/p, p = Phi(-L - d sqrt n) + Phi(-L + d sqrt n)
 * @validity normal independent values, limits known; for estimated limits see `estimatedLimitsRunLength`
 */
export function shewhartRunLength({ limitFactor, subgroupSize, shift }: ShewhartChart): RunLength {
  requireWithin({ limitFactor }, { above: 0, max: 8 });
  requireWhole({ subgroupSize }, { min: 1, max: 10_000 });
  requireWithin({ shift }, { min: -1000, max: 1000 });
  const moved = shift * Math.sqrt(subgroupSize);
  const signal_frac = normalCdf(-limitFactor - moved) + normalSurvival(limitFactor - moved);
  return { mean: 1 / signal_frac, sd: Math.sqrt(1 - signal_frac) / signal_frac, signal_frac };
}
