import { requireWithin, StatsError } from '#elementary';
import type { OpenLimits } from './gross-misclassification.ts';
import { intervalProbability } from './interval-probability.ts';
import { pairProbabilities } from './pair-probabilities.ts';
import { requireInterval } from './require-interval.ts';

/** Shares of all units. */
export interface GlobalRisks {
  /** Outside the tolerance and accepted. */
  readonly consumerRisk: number;
  /** Inside the tolerance and rejected. */
  readonly producerRisk: number;
  readonly accepted: number;
  readonly conforming: number;
}

/**
 * Risks of a measured decision over a whole production: bad accepted, good rejected.
 *
 * @param input - mean and sd of the true values (sd above 0); standardUncertainty: from 0; tolerance: one limit or both;
 *   guardBand: by which the acceptance limits lie inside the tolerance, in the unit of the data; negative: outside
 * @returns consumer's and producer's risk, shares accepted and conforming
 * @throws StatsError "not-finite", "out-of-range" (a guard band that leaves no acceptance interval)
 * @source JCGM 106:2012, clause 9 (from memory)
 * @validity normal true values, normal measurement error independent of them; absolute error below 1e-12
 */
export function globalRisks(input: {
  readonly mean: number;
  readonly sd: number;
  readonly standardUncertainty: number;
  readonly tolerance: OpenLimits;
  readonly guardBand?: number;
}): GlobalRisks {
  const { mean, sd, standardUncertainty, guardBand = 0 } = input;
  requireWithin({ mean, guardBand });
  requireWithin({ sd }, { above: 0 });
  requireWithin({ standardUncertainty }, { min: 0 });
  const good = requireInterval(input.tolerance, 'tolerance');
  const accepted = { low: good.low + guardBand, high: good.high - guardBand };
  if (!(accepted.low < accepted.high))
    throw new StatsError('out-of-range', { guardBand, below: 0.5 * (good.high - good.low) });
  const shares = pairProbabilities({
    ...{ mean, sd, good, readingMean: mean, slope: 1, scatter: standardUncertainty, accepted },
  });
  const readingSd = Math.sqrt(sd * sd + standardUncertainty * standardUncertainty);
  return {
    ...{ consumerRisk: shares.badAccepted, producerRisk: shares.goodRejected },
    accepted: intervalProbability({ mean, sd: readingSd, inside: accepted }).inside,
    conforming: intervalProbability({ mean, sd, inside: good }).inside,
  };
}
