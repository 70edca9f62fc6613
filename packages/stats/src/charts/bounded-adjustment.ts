import { normalCdf } from '#distributions';
import { exp, log, pow, requireWithin } from '#elementary';
import { randomWalkExit } from './random-walk-exit.kernel.ts';

export interface BoundedAdjustmentInput {
  /** Weight of the newest deviation in the forecast; of the disturbance 1 - theta. */
  readonly lambda: number;
  /** Half width of the dead band on the forecast, in standard deviations of the one-step forecast error. */
  readonly deadBand: number;
  /** Observations between a change and its effect; only 0 is known here. */
  readonly delayCount?: number;
}

export interface BoundedAdjustment {
  /** Dead band in steps of the forecast: deadBand / lambda. */
  readonly standardBand: number;
  /** Mean number of observations between changes. */
  readonly interval: number;
  /** Mean square of the forecast in steps. */
  readonly meanSquare: number;
  /** Mean square deviation from target in units of the squared forecast error, 1 at best. */
  readonly meanSquareRatio: number;
  readonly sdIncrease_pct: number;
  /** The published approximations of interval and mean square. */
  readonly approximateInterval: number;
  readonly approximateMeanSquare: number;
}

/**
 * What a dead band around the forecast costs and saves: mean interval between changes and mean square deviation.
 *
 * The forecast is a random walk with steps lambda s_a that starts anew at 0 after a change. With B = L / (lambda s_a): interval
 * = mean exit time from -B..B; MSD / s_a^2 = 1 + lambda^2 g(B), g the mean square of the states visited.
 *
 * @param input - lambda above 0, up to 1; deadBand above 0; deadBand / lambda at most 100; delayCount 0 or left out
 * @returns exact means by integral equation, and the approximations of the book
 * @throws StatsError "not-finite", "out-of-range" (also: a delay)
 * @source G. E. P. Box, A. Luceno, Statistical Control by Monitoring and Feedback Adjustment (1997) (from memory); the approximations
 *   agree within 1 % from B = 2 on
 * @validity disturbance IMA(0,1,1) with this lambda, each change takes full effect on the next observation, gain known, changes
 *   unlimited; with a delay, or sampling every m strokes with the lambda of every stroke, it does not apply
 */
export function boundedAdjustment({ lambda, deadBand, delayCount = 0 }: BoundedAdjustmentInput): BoundedAdjustment {
  requireWithin({ lambda }, { above: 0, max: 1 });
  requireWithin({ deadBand }, { above: 0, max: 100 * lambda });
  requireWithin({ delayCount }, { min: 0, max: 0 });
  const standardBand = deadBand / lambda;
  const { steps, meanSquare } = randomWalkExit(standardBand);
  const meanSquareRatio = 1 + lambda * lambda * meanSquare;
  const bend = pow(standardBand, 0.3) - 0.88;
  const square = standardBand * standardBand;
  return {
    ...{ standardBand, interval: steps, meanSquare, meanSquareRatio },
    sdIncrease_pct: 100 * (Math.sqrt(meanSquareRatio) - 1),
    approximateInterval: (1 + 1.1 * standardBand + square) * (1 - 0.115 * exp(-9.2 * bend * bend)),
    approximateMeanSquare: (1 + 0.06 * square) / (1 - 0.647 * normalCdf(1.35 * (log(standardBand) - 0.67))) - 1,
  };
}
