import { massSummary } from './mass-summary.ts';
import { netByMeanTare } from './net-by-mean-tare.ts';
import type { TareOfWeights } from './net-masses.ts';
import { spreadInterval } from './spread-interval.ts';
import type { MassSummary } from './weights-judgement.ts';

/**
 * Summary of net masses. With a mean tare the shells' own spread is taken out of the spread, and the tare's standard error goes
 * into the interval of the mean.
 *
 * @param net_mg - net masses, at least 2
 * @param tared - how they were found
 * @returns the summary; with a mean tare and a net variance that is not told from 0 (below one degree of freedom) the spread of the gross masses is left
 * @throws StatsError "out-of-range" (fewer than 2)
 * @source variance of a difference; degrees of freedom after F. E. Satterthwaite (1946), Biometrics Bull. 2
 * @validity normal fills and shells, independent; the interval of a small difference of variances is approximate
 */
export function netSummary(net_mg: readonly number[], { way, tare }: TareOfWeights): MassSummary {
  const plain = massSummary(net_mg);
  if (way !== 'mean-tare' || !tare) return plain;
  const { capsuleCount, confidence_frac } = plain;
  const { sd_mg: tareSd_mg, shellCount, standardError_mg: tareStandardError_mg } = tare;
  const of = { capsuleCount, grossSd_mg: plain.sd.value_mg, tareSd_mg, shellCount, tareStandardError_mg };
  const { half_mg, sd_mg, degreesOfFreedomCount } = netByMeanTare({ ...of, confidence_frac });
  const mean_mg = plain.mean.value_mg;
  const mean = { value_mg: mean_mg, low_mg: mean_mg - half_mg, high_mg: mean_mg + half_mg };
  if (sd_mg === undefined || degreesOfFreedomCount === undefined) return { ...plain, mean };
  const sd = spreadInterval({ sd_mg, degreesOfFreedomCount, confidence_frac });
  const share_pct = (of_mg: number): number => (100 * of_mg) / Math.abs(mean_mg);
  return {
    ...plain,
    ...{ mean, sd, degreesOfFreedomCount },
    rsd: { value_pct: share_pct(sd.value_mg), low_pct: share_pct(sd.low_mg), high_pct: share_pct(sd.high_mg) },
  };
}
