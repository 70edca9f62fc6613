// Uniformity of dosage units, harmonised text: Ph. Eur. 2.9.40, USP <905>, JP 6.02 (ICH Q4B annex 6), table 2. All in %
// of the label claim, except the factors k. Sources and cross-checks: SOURCES.md.

/** Largest acceptance value that passes (L1). */
export const LARGEST_ACCEPTANCE_VALUE = 15;
/** Largest deviation of a unit from the reference value at stage 2, as a share of the reference value (0.01 L2). */
export const LARGEST_UNIT_DEVIATION = 0.25;

/** Limits of the test; a monograph may set its own. */
export interface DosageUnitLimits {
  /** L1: largest acceptance value that passes. */
  readonly acceptanceValue: number;
  /** L2: largest deviation of a unit from the reference value at stage 2, % of the reference value. */
  readonly unitDeviation_pct: number;
}

/** L1 and L2 of the harmonised text. */
export const DOSAGE_UNIT_LIMITS: DosageUnitLimits = { acceptanceValue: 15, unitDeviation_pct: 25 };

/** Contents come from divisions and differences; what is this close to an edge lies on it. */
export const ROUNDING = 1e-12;

/** Acceptability constant k by number of units tested. */
export const FACTORS: Readonly<Record<number, number | undefined>> = { 10: 2.4, 30: 2 };
export const FACTOR_OF_10 = 2.4;
export const FACTOR_OF_30 = 2;

/** Means inside the zone are their own reference value; outside, its nearer edge is. */
export interface ReferenceZone {
  readonly low: number;
  readonly high: number;
}

/**
 * Reference zone for a target content T: up to T = 101.5 it is 98.5 to 101.5, above it is 98.5 to T.
 *
 * @param target - T in % of claim; the caller checks it
 * @returns lower and upper edge in % of claim
 * @throws nothing
 * @source Ph. Eur. 2.9.40, table 2.9.40.-2
 */
export function referenceZone(target: number): ReferenceZone {
  return { low: 98.5, high: Math.max(101.5, target) };
}
