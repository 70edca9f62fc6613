import { exp, log, requireWithin, StatsError } from '#elementary';
import type { BoundedAdjustment } from './bounded-adjustment.ts';
import { boundedAdjustment } from './bounded-adjustment.ts';
import { leastPoint } from './least-point.ts';

export interface AdjustmentCosts {
  readonly lambda: number;
  /** Cost of one change of the setting. */
  readonly changeCost: number;
  /** Cost of one observation interval at a mean square deviation of one squared forecast error. */
  readonly offTargetCost: number;
}

export interface BestDeadBand extends BoundedAdjustment {
  /** Half width of the dead band, in standard deviations of the one-step forecast error. */
  readonly deadBand: number;
  /** Mean cost of one observation interval, in the unit of the costs. */
  readonly cost: number;
  /** The same when the setting follows the forecast after every observation. */
  readonly everyTimeCost: number;
}

const NARROWEST = 0.01;
const WIDEST = 100;

/**
 * The dead band of least mean cost.
 *
 * cost = change cost / interval + off-target cost x MSD / s_a^2.
 *
 * @param input - lambda above 0, up to 1; changeCost 0 or more; offTargetCost above 0
 * @returns dead band (to 0.1 %), its interval and mean square deviation, its cost and that of a change every time; where
 *   changes cost next to nothing the narrowest band tried, B = 0.01
 * @throws StatsError "not-finite", "out-of-range" (a cost; or changes so dear that the best band lies beyond 100 steps)
 * @source G. E. P. Box, A. Luceno (1997), cost model (from memory); golden section over log B
 * @validity as for `boundedAdjustment`; the cost of looking is not in it, since it is paid in any case
 */
export function bestDeadBand({ lambda, changeCost, offTargetCost }: AdjustmentCosts): BestDeadBand {
  requireWithin({ lambda }, { above: 0, max: 1 });
  requireWithin({ changeCost }, { min: 0 });
  requireWithin({ offTargetCost }, { above: 0 });
  const costOf = (standardBand: number): number => {
    const { interval, meanSquareRatio } = boundedAdjustment({ lambda, deadBand: lambda * standardBand });
    return changeCost / interval + offTargetCost * meanSquareRatio;
  };
  const interval = { from: log(NARROWEST), to: log(WIDEST), tolerance: 1e-3 };
  const standardBand = exp(leastPoint((at) => costOf(exp(at)), interval));
  if (standardBand > 0.99 * WIDEST) throw new StatsError('out-of-range', { standardBand, max: WIDEST });
  const deadBand = lambda * standardBand;
  const everyTimeCost = changeCost + offTargetCost;
  return { ...boundedAdjustment({ lambda, deadBand }), deadBand, cost: costOf(standardBand), everyTimeCost };
}
