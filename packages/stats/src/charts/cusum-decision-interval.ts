import { log, requireWithin } from '#elementary';
import { cusumRunLength } from './cusum-run-length.ts';
import { secantRoot } from './secant-root.ts';

export interface CusumIntervalInput {
  /** Reference value k, in standard deviations of the plotted value. */
  readonly reference: number;
  /** Mean number of points up to a false alarm of either sum. */
  readonly inControlRunLength: number;
  readonly headStart_frac?: number;
}

/**
 * Decision interval of a two-sided CUSUM chart for a wanted mean run length in control.
 *
 * @param input - reference 0.05 to 3; inControlRunLength 10 to 1e6; headStart_frac 0 to below 1
 * @returns decision interval h in standard deviations, run length met to 1e-9
 * @throws StatsError "not-finite", "out-of-range" (also: h would be above 24)
 * @source root of the integral equation of `cusumRunLength`
 * @validity normal independent values, target and sigma known
 */
export function cusumDecisionInterval({
  reference,
  inControlRunLength,
  headStart_frac = 0,
}: CusumIntervalInput): number {
  requireWithin({ reference }, { min: 0.05, max: 3 });
  requireWithin({ inControlRunLength }, { min: 10, max: 1e6 });
  requireWithin({ headStart_frac }, { min: 0, below: 1 });
  const wanted = log(inControlRunLength);
  const excess = (decisionInterval: number): number =>
    log(cusumRunLength({ reference, decisionInterval, shift: 0, headStart_frac }).twoSided) - wanted;
  // Siegmund's approximation of one sum without the overshoot, b = h + 1.166: ARL = (exp(2kb) - 2kb - 1) / 2k^2.
  const first = Math.min(
    20,
    Math.max(0.3, log(1 + 4 * reference * reference * inControlRunLength) / (2 * reference) - 1.1),
  );
  return secantRoot(excess, { guess: first, step: 0.05 * first, above: 0.1, tolerance: 1e-9 });
}
