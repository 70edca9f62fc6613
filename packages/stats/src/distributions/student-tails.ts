import { pow, requireWithin } from '#elementary';
import { betaTails } from './beta-tails.ts';
import type { Tails } from './tail.ts';

/** A Student t law and a point on it. */
export interface StudentPoint {
  readonly x: number;
  readonly degreesOfFreedom: number;
}

/** From this many scale lengths the tail is a power of x to all digits. */
export const POWER_FROM = 1e8;

/**
 * Both tails of the Student t law.
 *
 * @param point - x: finite; degreesOfFreedom: 0.01 to 1e9
 * @returns lower and upper tail
 * @throws StatsError "not-finite", "out-of-range"
 * @source Abramowitz, Stegun (1964) 26.5.27
 * @validity relative error of the smaller tail below 1e-12
 */
export function studentTails({ x, degreesOfFreedom }: StudentPoint): Tails {
  requireWithin({ x });
  requireWithin({ degreesOfFreedom }, { min: 0.01, max: 1e9 });
  const { beyond, within: around } = studentBeyond(Math.abs(x), degreesOfFreedom);
  const near = 0.5 + 0.5 * around;
  return x < 0 ? { lower: 0.5 * beyond, upper: near } : { lower: near, upper: 0.5 * beyond };
}

/**
 * Probabilities of a Student t value beyond a distance from 0, on both sides together, and within it.
 *
 * @param distance - from 0
 * @param degreesOfFreedom - above 0
 * @returns beyond and within, adding up to 1
 * @throws nothing
 * @source Abramowitz, Stegun (1964) 26.5.27
 * @validity as `studentTails`
 */
export function studentBeyond(distance: number, degreesOfFreedom: number): { beyond: number; within: number } {
  const scaled = distance / Math.sqrt(degreesOfFreedom);
  if (scaled <= POWER_FROM) return within(scaled, degreesOfFreedom);
  const edge = within(POWER_FROM, degreesOfFreedom);
  const beyond = edge.beyond * pow(POWER_FROM / scaled, degreesOfFreedom);
  return { beyond, within: 1 - beyond };
}

function within(scaled: number, degreesOfFreedom: number): { beyond: number; within: number } {
  const odds = scaled * scaled;
  const point = { x: odds / (1 + odds), y: 1 / (1 + odds), alpha: 0.5, beta: 0.5 * degreesOfFreedom };
  const { lower, upper } = betaTails(point);
  return { beyond: upper, within: lower };
}
