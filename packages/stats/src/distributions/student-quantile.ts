import { pow, requireWithin } from '#elementary';
import { oddsQuantile } from './odds-quantile.ts';
import { POWER_FROM, studentBeyond } from './student-tails.ts';
import type { Tail } from './tail.ts';

/**
 * Quantile of the Student t law.
 *
 * @param input - p: above 0 and below 1, counted from `tail` (lower unless given); degreesOfFreedom: 0.01 to 1e9
 * @returns x with P(X <= x) = p, or P(X > x) = p for the upper tail
 * @throws StatsError "not-finite", "out-of-range"
 * @source inverse of `studentTails`
 * @validity relative error below 1e-12
 */
export function studentQuantile(input: {
  readonly p: number;
  readonly degreesOfFreedom: number;
  readonly tail?: Tail;
}): number {
  const { p, degreesOfFreedom, tail = 'lower' } = input;
  requireWithin({ p }, { above: 0, below: 1 });
  requireWithin({ degreesOfFreedom }, { min: 0.01, max: 1e9 });
  if (p === 0.5) return 0;
  const isNegative = (tail === 'lower') === p < 0.5;
  const distance = distanceOf(Math.min(p, 1 - p), degreesOfFreedom);
  return isNegative ? -distance : distance;
}

/** Distance from 0 with this probability, below one half, beyond it on one side. */
function distanceOf(p: number, degreesOfFreedom: number): number {
  const scale = Math.sqrt(degreesOfFreedom);
  const far = 0.5 * studentBeyond(POWER_FROM * scale, degreesOfFreedom).beyond;
  if (p < far) {
    const distance = POWER_FROM * scale * pow(far / p, 1 / degreesOfFreedom);
    requireWithin({ quantile: distance });
    return distance;
  }
  const beta = { alpha: 0.5, beta: 0.5 * degreesOfFreedom };
  const odds =
    p < 0.25
      ? oddsQuantile({ ...beta, p: 2 * p, tail: 'upper' })
      : oddsQuantile({ ...beta, p: 1 - 2 * p, tail: 'lower' });
  return scale * Math.sqrt(odds);
}
