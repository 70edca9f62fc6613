import { capabilityIndices } from '@fillwright/stats/inference';
import type { LimitCard } from '#design';
import type { CapabilityOfWeights, MassSummary } from './weights-judgement.ts';

const CONFIDENCE_frac = 0.95;
/** Fewer give an interval that says nothing. @source common practice, no source */
const LEAST_COUNT = 10;

/**
 * Performance of the net masses against the single limits: Pp, Ppk with its interval. One sample tells of one time: it is no
 * capability over the run.
 *
 * @param net - summary of the net masses
 * @param card - the single limits
 * @returns the indices; undefined without limits, for fewer than 10 capsules and where there is no spread
 * @throws StatsError "out-of-range"
 * @source A. F. Bissell (1990), Appl. Stat. 39, 331-340, through package stats
 * @validity normal masses; the interval is approximate
 */
export function capabilityOfWeights(
  net: MassSummary | undefined,
  card: LimitCard | undefined,
): CapabilityOfWeights | undefined {
  if (!net || !card || net.capsuleCount < LEAST_COUNT || !(net.sd.value_mg > 0)) return undefined;
  const { capsuleCount, mean, sd } = net;
  const { netLow_mg, netHigh_mg } = card.individualAction;
  const { cp, cpk } = capabilityIndices({
    ...{ n: capsuleCount, mean: mean.value_mg, sd: sd.value_mg, confidence: CONFIDENCE_frac },
    ...{ lower: netLow_mg, upper: netHigh_mg },
  });
  return {
    ...{ capsuleCount, pp_ratio: cp!.value, ppk_ratio: cpk.value },
    ...{ ppkLow_ratio: cpk.low, ppkHigh_ratio: cpk.high, confidence_frac: CONFIDENCE_frac },
  };
}
