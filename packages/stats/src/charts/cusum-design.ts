import { requireWithin } from '#elementary';
import { cusumDecisionInterval } from './cusum-decision-interval.ts';
import { cusumRunLength } from './cusum-run-length.ts';
import type { DesignWish } from './ewma-design.ts';
import { leastPoint } from './least-point.ts';

export interface CusumDesign {
  readonly reference: number;
  readonly decisionInterval: number;
  /** Mean run length at the shift, sums starting at 0. */
  readonly runLength: number;
}

/**
 * The two-sided CUSUM chart that finds a given shift soonest on average for a given mean run length in control.
 *
 * @param input - shift 0.2 to 4; inControlRunLength 10 to 1e6
 * @returns reference value (near half the shift), decision interval, mean run length at the shift
 * @throws StatsError "not-finite", "out-of-range"
 * @source golden section over the reference value; k = shift/2 is the classical rule (from memory)
 * @validity normal independent values, target and sigma known, shift present from the start
 */
export function cusumDesign({ shift, inControlRunLength }: DesignWish): CusumDesign {
  requireWithin({ shift }, { min: 0.2, max: 4 });
  requireWithin({ inControlRunLength }, { min: 10, max: 1e6 });
  const designed = (reference: number): CusumDesign => {
    const decisionInterval = cusumDecisionInterval({ reference, inControlRunLength });
    return { reference, decisionInterval, runLength: cusumRunLength({ reference, decisionInterval, shift }).twoSided };
  };
  const interval = { from: Math.max(0.05, 0.3 * shift), to: Math.min(3, 0.8 * shift), tolerance: 1e-3 * shift };
  return designed(leastPoint((reference) => designed(reference).runLength, interval));
}
