import { exp, requireWithin } from '#elementary';
import { type Interval, intervalProbability } from './interval-probability.ts';

const DENSITY = 0.3989422804014327;

/**
 * Mean and standard deviation of a normal value of which only what lies inside an interval is kept.
 *
 * @param law - mean; sd: above 0; inside: the interval, an open side is an infinity
 * @returns mean and sd of what is kept; nothing where nothing is kept
 * @throws StatsError "not-finite", "not-a-number", "out-of-range"
 * @source definition; N. L. Johnson, S. Kotz, N. Balakrishnan, Continuous Univariate Distributions 1 (1994), 10.1 (from memory)
 * @validity an interval far narrower than the sd costs digits of the sd
 */
export function truncatedNormal(law: {
  readonly mean: number;
  readonly sd: number;
  readonly inside: Interval;
}): { mean: number; sd: number } | undefined {
  const { mean, sd, inside } = law;
  requireWithin({ mean });
  requireWithin({ sd }, { above: 0 });
  const kept = intervalProbability(law).inside;
  if (!(kept > 0)) return undefined;
  const [low, high] = [(inside.low - mean) / sd, (inside.high - mean) / sd];
  const first = (density(low) - density(high)) / kept;
  const second = (moment(low) - moment(high)) / kept;
  return { mean: mean + sd * first, sd: sd * Math.sqrt(Math.max(0, 1 + second - first * first)) };
}

function density(z: number): number {
  return DENSITY * exp(-0.5 * z * z);
}

/** z times the density; 0 at an open side. */
function moment(z: number): number {
  return Number.isFinite(z) ? z * density(z) : 0;
}
