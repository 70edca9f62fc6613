import type { TareOfWeights } from './net-masses.ts';
import type { MassSummary, NetFromGross } from './weights-judgement.ts';

/**
 * How net was found, and the spread of the net masses: with a mean tare, gross variance less shell variance.
 *
 * @param tared - the tare and the net masses
 * @param gross - summary of the gross masses; left out for fewer than 2
 * @returns way, tare, and the spread of net; with a negative variance no sd
 * @throws nothing
 * @source variance of a difference of independent masses
 * @validity mean tare: fill and shell are independent. A negative variance is what few capsules or shells of another lot give
 */
export function netFromGross(tared: TareOfWeights, gross: MassSummary | undefined): NetFromGross {
  const { way, tare } = tared;
  const known = tare && {
    ...{ tareMean_mg: tare.mean_mg, shellCount: tare.shellCount },
    ...(Number.isFinite(tare.sd_mg) ? { tareSd_mg: tare.sd_mg } : {}),
    ...(way === 'mean-tare' ? { tareStandardError_mg: tare.standardError_mg } : {}),
  };
  if (way !== 'mean-tare' || !tare || !gross) return { way, ...known };
  const netVariance_mg2 = gross.sd.value_mg * gross.sd.value_mg - tare.sd_mg * tare.sd_mg;
  const sd = netVariance_mg2 >= 0 ? { netSd_mg: Math.sqrt(netVariance_mg2) } : {};
  return { way, ...known, netVariance_mg2, ...sd };
}
