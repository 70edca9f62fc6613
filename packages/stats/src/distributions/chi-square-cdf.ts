import { requireWhole, requireWithin } from '#elementary';
import type { ChiSquareInput } from './chi-square-tails.ts';
import { chiSquareTails } from './chi-square-tails.ts';

/**
 * Distribution function of the chi-square law, accurate in the lower tail.
 *
 * @param input - x: any finite number (0 below 0); degreesOfFreedom: whole, 1 to 1000
 * @returns probability of a value up to x, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source Abramowitz, Stegun (1964) 26.4.4, 26.4.5 (finite sums), 26.4.6 (series)
 * @validity relative error below 2e-14; for the upper tail use `chiSquareSurvival`
 */
export function chiSquareCdf(input: ChiSquareInput): number {
  requireWithin({ x: input.x });
  requireWhole({ degreesOfFreedom: input.degreesOfFreedom }, { min: 1, max: 1000 });
  return chiSquareTails(input).lower;
}
