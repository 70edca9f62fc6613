import { requireWithin } from '#elementary';
import { LARGEST_ACCEPTANCE_VALUE, referenceZone } from './dosage-unit-rules.ts';
import { twoStagePass } from './two-stage-pass.kernel.ts';

/** Normal contents of single units, in % of claim. */
export interface DosageUnits {
  readonly mean: number;
  readonly sd: number;
  /** Of what all units of the batch have in common; left out: 0. */
  readonly biasSd?: number;
  readonly target?: number;
}

/** A smaller spread counts as this one: below it the doubles near 100 are too coarse, and it changes nothing real. */
const SMALLEST_SD = 1e-6;

/**
 * Probability that a batch passes the two-stage test of the uniformity of dosage units when the contents of its units are
 * independent and normal: 10 units, AV at most 15; else 20 more, AV of all 30 at most 15 and every unit within 0.75 M to
 * 1.25 M. Computed, not simulated; values are not rounded before they are judged.
 *
 * @param units - mean; sd of a unit; biasSd: sd of what all units of the batch have in common, default 0; both from 0, in % of
 *   claim; target: T in % of claim, above 0, at most 120, default 100
 * @returns probability, 0 to 1
 * @throws StatsError "not-finite", "out-of-range"
 * @source Ph. Eur. 2.9.40, USP <905>, table 2; see SOURCES.md for the calculation
 * @validity error below 1e-6, below 2e-5 where sd is below 0.2 and biasSd above 2; normal contents only; an sd below 1e-6
 *   counts as 1e-6 unless both are 0
 */
export function probabilityOfPassingDosageUnits({ mean, sd, biasSd = 0, target = 100 }: DosageUnits): number {
  requireWithin({ mean });
  requireWithin({ sd, biasSd }, { min: 0 });
  requireWithin({ target }, { above: 0, max: 120 });
  const zone = referenceZone(target);
  if (sd === 0 && biasSd === 0) return Math.max(zone.low - mean, mean - zone.high) <= LARGEST_ACCEPTANCE_VALUE ? 1 : 0;
  return twoStagePass({ mean, sd: Math.max(sd, SMALLEST_SD), biasSd, zone });
}
