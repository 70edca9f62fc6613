import { meanAndRangeLimits, meanAndSdLimits } from '#charts';
import { StatsError } from '#elementary';
import { capabilityIndices, type CapabilityIndices, sampleSummary } from '#inference';

/** Capability within subgroups and performance overall, each with the sd it rests on. */
export interface SubgroupCapability {
  readonly count: number;
  readonly mean: number;
  readonly overallSd: number;
  readonly pooledSd: number;
  /** Rbar/d2; nothing when the subgroups differ in size. */
  readonly rangeSd: number | undefined;
  /** sbar/c4, weighted when the subgroups differ in size. */
  readonly meanSdSd: number;
  /** Cp and Cpk: with the pooled sd. */
  readonly within: CapabilityIndices;
  /** Pp and Ppk: with the sd of all values. */
  readonly overall: CapabilityIndices;
}

/**
 * Capability from subgroups. Cp and Cpk rest on the pooled sd inside the subgroups, Pp and Ppk on the sd of all values; the
 * two other estimates of the sd inside are shown beside them.
 *
 * @param input - subgroups: two or more of two or more values; lower, upper: one limit at least; confidence: 0.95 unless given
 * @returns the standard deviations, indices within and overall with their limits
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (values all alike inside the subgroups: no index)
 * @source ISO 22514-2 and -4 (secondary); ISO 7870-2 for d2 and c4 (secondary)
 * @validity a process in control; stations of one stroke as a subgroup make the sd within one between stations
 */
export function capabilityFromSubgroups(input: {
  readonly subgroups: readonly (readonly number[])[];
  readonly lower?: number;
  readonly upper?: number;
  readonly confidence?: number;
}): SubgroupCapability {
  const { subgroups, ...asked } = input;
  const { pooledSd, sigma } = meanAndSdLimits({ subgroups });
  const { count: n, mean, sd: overallSd } = sampleSummary({ values: subgroups.flat() });
  if (!(pooledSd > 0)) throw new StatsError('out-of-range', { pooledSd, above: 0 });
  const isEven = subgroups.every((values) => values.length === subgroups[0]!.length);
  return {
    ...{ count: n, mean, overallSd, pooledSd, meanSdSd: sigma },
    rangeSd: isEven ? meanAndRangeLimits({ subgroups }).sigma : undefined,
    within: capabilityIndices({ ...asked, n, mean, sd: pooledSd, degreesOfFreedom: n - subgroups.length }),
    overall: capabilityIndices({ ...asked, n, mean, sd: overallSd }),
  };
}
