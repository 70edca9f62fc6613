import { normalQuantile } from '#distributions';
import { log, requireWithin } from '#elementary';
import { ewmaMeanRunLength } from './ewma-mean-run-length.kernel.ts';
import { secantRoot } from './secant-root.ts';

export interface EwmaLimitInput {
  /** Weight of the newest value. */
  readonly lambda: number;
  /** Mean number of points up to a false alarm. */
  readonly inControlRunLength: number;
  /** Where to begin the search; left out: from the chart without memory. */
  readonly guess?: number;
}

/**
 * Width of the limits of a two-sided EWMA chart for a wanted mean run length in control.
 *
 * @param input - lambda 0.01 to 1; inControlRunLength 2 to 1e6; constant limits, fresh chart
 * @returns width L in standard deviations of the average, to 1e-9
 * @throws StatsError "not-finite", "out-of-range"
 * @source root of the integral equation of `ewmaRunLength`
 * @validity normal independent values, target and sigma known
 */
export function ewmaLimitFactor({ lambda, inControlRunLength, guess }: EwmaLimitInput): number {
  requireWithin({ lambda }, { min: 0.01, max: 1 });
  requireWithin({ inControlRunLength }, { min: 2, max: 1e6 });
  const wanted = log(inControlRunLength);
  const excess = (limitFactor: number): number => log(ewmaMeanRunLength({ lambda, limitFactor, shift: 0 })) - wanted;
  const first = guess ?? -0.92 * normalQuantile(0.5 / inControlRunLength);
  return secantRoot(excess, { guess: first, step: 0.02 * first, above: 0, tolerance: 1e-9 });
}
