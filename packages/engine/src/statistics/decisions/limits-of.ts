import type { DosageUnitLimits } from '@fillwright/stats/decisions';
import { DOSAGE_UNIT_LIMITS } from '@fillwright/stats/decisions';

/**
 * Limits of the uniformity of dosage units, with the values of the harmonised text where none are given.
 *
 * @param given - L1 and L2 of a monograph, % of claim and % of the reference value
 * @returns both limits
 * @throws nothing
 * @source none: bookkeeping
 */
export function limitsOf(given: {
  readonly acceptanceLimit_pct?: number;
  readonly unitDeviation_pct?: number;
}): DosageUnitLimits {
  return {
    acceptanceValue: given.acceptanceLimit_pct ?? DOSAGE_UNIT_LIMITS.acceptanceValue,
    unitDeviation_pct: given.unitDeviation_pct ?? DOSAGE_UNIT_LIMITS.unitDeviation_pct,
  };
}
