import { normalCdf, normalSurvival } from '#distributions';
import { pow, requireWithin } from '#elementary';
import { LARGEST_ACCEPTANCE_VALUE, LARGEST_UNIT_DEVIATION, referenceZone } from './dosage-unit-rules.ts';
import { stageProbability } from './stage-probability.kernel.ts';

/** Mean and standard deviation of a batch, taken as known, in % of claim. */
export interface KnownBatch {
  readonly mean: number;
  readonly sd: number;
  readonly target?: number;
}

/** Probabilities of the single criteria, and the bound that the practice makes of them. */
export interface PassingBound {
  /** P(AV of 10 within 15). */
  readonly stage1: number;
  /** P(AV of 30 within 15). */
  readonly acceptanceValueOf30: number;
  /** P(each of 30 units within the limits that hold for every M). */
  readonly unitsOf30: number;
  /** Largest of stage1, acceptanceValueOf30 + unitsOf30 - 1, and 0. */
  readonly bound: number;
}

/**
 * Lower bound on the probability of passing the uniformity of dosage units, the way of the practice for multiple-stage tests:
 * the better stage, and for criteria that must hold together the sum of their probabilities less (number - 1). The exact
 * probability is `probabilityOfPassingDosageUnits`; the bound lies below it.
 *
 * @param batch - mean, sd (from 0) in % of claim; target: T, above 0, at most 120, default 100
 * @returns the bound and what it is made of, each 0 to 1
 * @throws StatsError "not-finite", "out-of-range"
 * @source ASTM E2709, E2810; J. S. Bergum, H. Li (2007), Pharm. Technol. 31(10)
 * @validity normal contents. Units are held to 0.75 x 101.5 (or T) up to 1.25 x 98.5, what all M have in common: our reading,
 *   conservative, it matters for sd above about 6
 */
export function passingBound({ mean, sd, target = 100 }: KnownBatch): PassingBound {
  requireWithin({ mean });
  requireWithin({ sd }, { min: 0 });
  requireWithin({ target }, { above: 0, max: 120 });
  const stage1 = withinLimit({ mean, sd, target }, 10);
  const second = secondStage({ mean, sd, target });
  const both = second.acceptanceValueOf30 + second.unitsOf30 - 1;
  return { stage1, ...second, bound: Math.max(stage1, both, 0) };
}

/**
 * P(AV of n units within 15), for the contour of the bound.
 *
 * @param batch - as for `passingBound`; the caller checks it
 * @param n - 10 or 30
 * @returns probability, 0 to 1
 * @throws nothing
 * @source Ph. Eur. 2.9.40, table 2.9.40.-2
 */
export function withinLimit({ mean, sd, target }: Required<KnownBatch>, n: 10 | 30): number {
  const law = { mean, meanSd: sd / Math.sqrt(n), sd, n, zone: referenceZone(target) };
  return stageProbability(law, LARGEST_ACCEPTANCE_VALUE);
}

/**
 * The two criteria of stage 2.
 *
 * @param batch - as for `passingBound`; the caller checks it
 * @returns P(AV of 30 within 15), P(all 30 units within the common limits)
 * @throws nothing
 * @source Ph. Eur. 2.9.40, table 2.9.40.-2
 */
export function secondStage(batch: Required<KnownBatch>): Pick<PassingBound, 'acceptanceValueOf30' | 'unitsOf30'> {
  return { acceptanceValueOf30: withinLimit(batch, 30), unitsOf30: unitsOf30(batch) };
}

function unitsOf30({ mean, sd, target }: Required<KnownBatch>): number {
  const { low, high } = referenceZone(target);
  const lowest = (1 - LARGEST_UNIT_DEVIATION) * high;
  const highest = (1 + LARGEST_UNIT_DEVIATION) * low;
  if (sd === 0) return lowest <= mean && mean <= highest ? 1 : 0;
  const outside = normalCdf((lowest - mean) / sd) + normalSurvival((highest - mean) / sd);
  return pow(Math.max(1 - outside, 0), 30);
}
