import { normalCdf, normalSurvival } from '#distributions';

/** Two ends of an interval; an open side is an infinity. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/**
 * Probability that a normal value lies inside an interval, and outside, each accurate when small.
 *
 * @param law - mean; sd: from 0 (0: the value is the mean); inside: limits, both belonging to it
 * @returns both probabilities
 * @throws StatsError "not-a-number"
 * @source definition of the normal law
 * @validity relative error below 1e-13, but for the inside of an interval far narrower than the sd
 */
export function intervalProbability(law: { readonly mean: number; readonly sd: number; readonly inside: Interval }): {
  inside: number;
  outside: number;
} {
  const { mean, sd, inside } = law;
  if (sd === 0) {
    const isInside = mean >= inside.low && mean <= inside.high;
    return { inside: isInside ? 1 : 0, outside: isInside ? 0 : 1 };
  }
  const low = (inside.low - mean) / sd;
  const high = (inside.high - mean) / sd;
  const outside = normalCdf(low) + normalSurvival(high);
  if (low > 0) return { inside: normalSurvival(low) - normalSurvival(high), outside };
  if (high < 0) return { inside: normalCdf(high) - normalCdf(low), outside };
  return { inside: 1 - outside, outside };
}
