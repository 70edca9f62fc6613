import type { Candidate, Merits } from './candidate.ts';
import { STEP } from './steps-that-count.ts';

/** Rounded merits, all written so that smaller is better. */
function costs(merits: Merits): readonly number[] {
  return [
    Math.round(merits.capsulesOutside_frac / STEP.share),
    Math.round(merits.sampleMeansOutside_frac / STEP.share),
    Math.round(merits.unit_pct / STEP.spread_pct),
    -Math.round(merits.volumeMargin_frac / STEP.margin),
    -Math.round(merits.adjusterMargin_frac / STEP.margin),
    -merits.speed_per_h,
    merits.partsToChangeCount,
  ];
}

/**
 * The candidates that no other one beats: better in one merit and no worse in all others.
 *
 * @param candidates - any number
 * @returns the first front, in the order given
 * @throws nothing
 * @source Pareto dominance
 * @validity differences below 0.1 percentage points of a share, 0.05 % of spread and 1 % of a margin do not count
 */
export function paretoFront(candidates: readonly Candidate[]): readonly Candidate[] {
  const all = candidates.map((candidate) => costs(candidate.merits));
  return candidates.filter((_, i) => !all.some((other, j) => j !== i && dominates(other, all[i] ?? [])));
}

function dominates(one: readonly number[], other: readonly number[]): boolean {
  return one.every((cost, i) => cost <= (other[i] ?? NaN)) && one.some((cost, i) => cost < (other[i] ?? NaN));
}
