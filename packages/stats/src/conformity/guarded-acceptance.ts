import { requireWithin } from '#elementary';
import type { OpenLimits } from './gross-misclassification.ts';
import { intervalProbability } from './interval-probability.ts';
import { requireInterval } from './require-interval.ts';

/** A measured value against limits drawn in by a guard band. */
export interface GuardedAcceptance {
  /** Probability that the true value is inside the tolerance, given this one measurement. */
  readonly conformance: number;
  /** One minus it, accurate when small: the specific risk of accepting. */
  readonly specificRisk: number;
  readonly guardBand: number;
  readonly acceptanceLow: number | undefined;
  readonly acceptanceHigh: number | undefined;
  readonly isAccepted: boolean;
}

/**
 * Conformance of one measured value and its acceptance inside limits drawn in by w = r k u.
 *
 * @param input - measured; standardUncertainty u: above 0; tolerance: one limit or both; coverage k: above 0; guard r: 0 or more
 *   (1 = the whole expanded uncertainty), negative widens the limits
 * @returns probability of conformance, acceptance limits, whether accepted (a limit itself is accepted)
 * @throws StatsError "not-finite", "out-of-range"; acceptance limits that cross accept nothing
 * @source JCGM 106:2012, clauses 7 and 8 (from memory)
 * @validity normal measurement error, nothing known beforehand of the measured value
 */
export function guardedAcceptance(input: {
  readonly measured: number;
  readonly standardUncertainty: number;
  readonly tolerance: OpenLimits;
  readonly coverage?: number;
  readonly guard?: number;
}): GuardedAcceptance {
  const { measured, standardUncertainty, coverage = 2, guard = 1 } = input;
  requireWithin({ measured, guard });
  requireWithin({ standardUncertainty, coverage }, { above: 0 });
  const tolerance = requireInterval(input.tolerance, 'tolerance');
  const { inside, outside } = intervalProbability({ mean: measured, sd: standardUncertainty, inside: tolerance });
  const guardBand = guard * coverage * standardUncertainty;
  const [low, high] = [tolerance.low + guardBand, tolerance.high - guardBand];
  return {
    ...{ conformance: inside, specificRisk: outside, guardBand },
    acceptanceLow: Number.isFinite(low) ? low : undefined,
    acceptanceHigh: Number.isFinite(high) ? high : undefined,
    isAccepted: measured >= low && measured <= high,
  };
}
