import type { LimitCard } from '#design';
import type { CapabilityOfWeights, MassSummary } from './weights-judgement.ts';

const CONFIDENCE_frac = 0.95;
/** Quantile of the normal law at 0.975. */
const Z = 1.959963984540054;
/** Fewer give an interval that says nothing. @source common practice, no source */
const LEAST_COUNT = 10;

/**
 * Performance of the net masses against the single limits: Pp, Ppk with its interval. One sample tells of one time: it is no
 * capability over the run.
 *
 * @param net - summary of the net masses
 * @param card - the single limits
 * @returns the indices; undefined without limits, for fewer than 10 capsules and where there is no spread
 * @throws nothing
 * @source A. F. Bissell (1990), How reliable is your capability index?, Appl. Stat. 39, 331-340: variance of Cpk
 *   1/(9 n) + Cpk^2 / (2 (n - 1))
 * @validity normal masses; the interval is approximate
 */
export function capabilityOfWeights(
  net: MassSummary | undefined,
  card: LimitCard | undefined,
): CapabilityOfWeights | undefined {
  if (!net || !card || net.capsuleCount < LEAST_COUNT || !(net.sd.value_mg > 0)) return undefined;
  const { capsuleCount } = net;
  const [mean_mg, sd_mg] = [net.mean.value_mg, net.sd.value_mg];
  const { netLow_mg, netHigh_mg } = card.individualAction;
  const ppk_ratio = Math.min(netHigh_mg - mean_mg, mean_mg - netLow_mg) / (3 * sd_mg);
  const variance = 1 / (9 * capsuleCount) + (ppk_ratio * ppk_ratio) / (2 * (capsuleCount - 1));
  const half_ratio = Z * Math.sqrt(variance);
  return {
    ...{ capsuleCount, pp_ratio: (netHigh_mg - netLow_mg) / (6 * sd_mg), ppk_ratio },
    ...{
      ppkLow_ratio: ppk_ratio - half_ratio,
      ppkHigh_ratio: ppk_ratio + half_ratio,
      confidence_frac: CONFIDENCE_frac,
    },
  };
}
