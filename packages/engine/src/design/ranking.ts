import type { Candidate, Criterion } from './candidate.ts';
import { STEP } from './steps-that-count.ts';

/** Criteria in ranking order with what they compare, smaller first. */
const RANKING: readonly (readonly [Criterion, (candidate: Candidate) => number])[] = [
  ['sample-means-outside', ({ merits }) => Math.round(merits.sampleMeansOutside_frac / STEP.share)],
  ['stations-on-spring', ({ merits }) => merits.onSpringCount],
  ['parts-to-change', ({ merits }) => merits.partsToChangeCount],
  ['adjuster-margin', ({ merits }) => -Math.round(merits.adjusterMargin_frac / STEP.margin)],
  ['volume-margin', ({ merits }) => -Math.round(merits.volumeMargin_frac / STEP.margin)],
  ['speed', ({ merits }) => -merits.speed_per_h],
];

/**
 * Orders candidates by the first criterion in which they differ, and says which one that was.
 *
 * @param one - a candidate
 * @param other - another one
 * @returns order below 0 when `one` comes first, and the criterion; `name` when they differ in nothing that counts
 * @throws nothing
 * @source this project's ranking: share of sample means outside (steps of 0.1 percentage points), fewer stations on
 *   spring, fewer parts to change, adjuster margin, volume margin, speed
 */
export function ranking(one: Candidate, other: Candidate): { readonly order: SignOfOrder; readonly by: Criterion } {
  for (const [by, value] of RANKING) {
    const order = value(one) - value(other);
    if (order !== 0) return { order, by };
  }
  const [a, b] = [one, other].map(({ size, settings }) => `${size} ${JSON.stringify(settings)}`);
  return { order: (a ?? '') < (b ?? '') ? -1 : 1, by: 'name' };
}

/** Below 0, 0 or above 0: no unit. */
type SignOfOrder = number;
