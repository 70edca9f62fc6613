import { requireWhole, requireWithin, StatsError } from '#elementary';
import type { DosageUnitLimits } from './dosage-unit-rules.ts';
import { DOSAGE_UNIT_LIMITS, FACTORS, referenceZone, ROUNDING } from './dosage-unit-rules.ts';

/** Mean and standard deviation of the contents of n units, in % of claim. */
export interface AcceptanceValueInput {
  readonly mean: number;
  readonly sd: number;
  readonly n: number;
  readonly target?: number;
  readonly limits?: DosageUnitLimits;
}

export interface AcceptanceValue {
  /** M. */
  readonly reference: number;
  readonly referenceCase: 'below' | 'inside' | 'above';
  /** k. */
  readonly factor: number;
  readonly acceptanceValue: number;
  /** Half-up to one decimal, the place of the limit. */
  readonly roundedAcceptanceValue: number;
  /** (1 - 0.01 L2) M and (1 + 0.01 L2) M; the text applies them at stage 2 only. */
  readonly lowestUnit: number;
  readonly highestUnit: number;
}

/**
 * Acceptance value of the uniformity of dosage units: AV = |M - mean| + k sd, not rounded and rounded.
 *
 * M is the mean itself from 98.5 to 101.5 (to T for a target above 101.5), else the nearer edge. k = 2.4 for 10 units, 2.0
 * for 30.
 *
 * @param input - mean, sd (n - 1 form, from 0) in % of claim; n: 10 or 30; target: T in % of claim, above 0, default 100;
 *   limits: default L1 15, L2 25 (only L2 is used here)
 * @returns reference value M, factor k, acceptance value, limits of single units, where the mean lies against the zone
 * @throws StatsError "not-finite", "out-of-range", "not-whole"; "sample-size" (n is neither 10 nor 30)
 * @source Ph. Eur. 2.9.40, table 2.9.40.-2; USP <905>, table 2; half-up rounding: USP General Notices 7.20 (from memory)
 * @validity the tests of the harmonised text; which of the two values is compared with the limit is the dossier's
 * @example acceptanceValue({ mean: 105.9, sd: 5, n: 10 }).acceptanceValue // 16.4
 */
export function acceptanceValue(input: AcceptanceValueInput): AcceptanceValue {
  const { mean, sd, n, target = 100, limits = DOSAGE_UNIT_LIMITS } = input;
  requireWithin({ mean });
  requireWithin({ sd }, { min: 0 });
  requireWithin({ target }, { above: 0 });
  requireWithin({ unitDeviation_pct: limits.unitDeviation_pct }, { above: 0, below: 100 });
  requireWhole({ n });
  const factor = FACTORS[n];
  if (factor === undefined) throw new StatsError('sample-size', { n });
  const { low, high } = referenceZone(target);
  const reference = Math.min(Math.max(mean, low), high);
  const found = Math.abs(reference - mean) + factor * sd;
  const share = limits.unitDeviation_pct / 100;
  return {
    reference,
    referenceCase: mean < low * (1 - ROUNDING) ? 'below' : mean > high * (1 + ROUNDING) ? 'above' : 'inside',
    factor,
    acceptanceValue: found,
    roundedAcceptanceValue: Math.floor(found * 10 * (1 + ROUNDING) + 0.5) / 10,
    lowestUnit: (1 - share) * reference,
    highestUnit: (1 + share) * reference,
  };
}
