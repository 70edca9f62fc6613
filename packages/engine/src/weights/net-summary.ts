import { chiSquareQuantile, studentQuantile } from '@fillwright/stats/distributions';
import { massSummary } from './mass-summary.ts';
import type { TareOfWeights } from './net-masses.ts';
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
  const n = plain.capsuleCount;
  const [gross_mg2, shell_mg2] = [plain.sd.value_mg * plain.sd.value_mg, tare.sd_mg * tare.sd_mg];
  const net_mg2 = gross_mg2 - shell_mg2;
  const p = (1 - plain.confidence_frac) / 2;
  const mean_mg = plain.mean.value_mg;
  const error_mg = Math.sqrt(gross_mg2 / n + tare.standardError_mg * tare.standardError_mg);
  const half_mg = studentQuantile({ p, degreesOfFreedom: n - 1, tail: 'upper' }) * error_mg;
  const mean = { value_mg: mean_mg, low_mg: mean_mg - half_mg, high_mg: mean_mg + half_mg };
  const shellPart = tare.shellCount > 1 ? (shell_mg2 * shell_mg2) / (tare.shellCount - 1) : 0;
  const degreesOfFreedom = (net_mg2 * net_mg2) / ((gross_mg2 * gross_mg2) / (n - 1) + shellPart);
  if (!(net_mg2 > 0 && degreesOfFreedom >= 1)) return { ...plain, mean };
  const edge_mg = (tail: 'lower' | 'upper'): number =>
    Math.sqrt((net_mg2 * degreesOfFreedom) / chiSquareQuantile({ p, degreesOfFreedom, tail }));
  const sd = { value_mg: Math.sqrt(net_mg2), low_mg: edge_mg('upper'), high_mg: edge_mg('lower') };
  const share_pct = (of_mg: number): number => (100 * of_mg) / Math.abs(mean_mg);
  const rsd = { value_pct: share_pct(sd.value_mg), low_pct: share_pct(sd.low_mg), high_pct: share_pct(sd.high_mg) };
  return { ...plain, mean, sd, rsd };
}
