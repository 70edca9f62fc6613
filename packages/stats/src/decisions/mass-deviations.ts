import { ROUNDING } from './dosage-unit-rules.ts';
import { sampleMoments } from './sample-moments.ts';

/** Deviations of single masses from their own mean. */
export interface MassDeviations {
  readonly mean: number;
  readonly largestDeviation_pct: number;
  /** Units that deviate by more than a limit in % of the mean, numbered from 1; "more than" is strict. */
  readonly beyond: (limit_pct: number) => readonly number[];
}

/**
 * Mean of masses, and who deviates from it. A difference of two weighings carries rounding of the computer: a deviation within
 * 1e-12 of the mean above a limit is on it.
 *
 * @param masses - at least 2, finite, in the unit of the data; the caller checks them
 * @returns mean, largest deviation in % of it, and the units beyond a limit
 * @throws nothing
 * @source Ph. Eur. 2.9.5; USP <2091>
 */
export function massDeviations(masses: readonly number[]): MassDeviations {
  const { mean } = sampleMoments(masses);
  const deviations = masses.map((mass) => Math.abs(mass - mean) / Math.abs(mean));
  const beyond = (limit_pct: number): number[] =>
    deviations.flatMap((deviation, i) => (deviation > limit_pct / 100 + ROUNDING ? [i + 1] : []));
  return { mean, largestDeviation_pct: 100 * Math.max(...deviations), beyond };
}
