import { requireWhole, requireWithin } from '#elementary';
import type { ChiSquareInput } from './chi-square-tails.ts';
import { chiSquareTails } from './chi-square-tails.ts';

/**
 * Probability of a chi-square value above x, accurate in the upper tail.
 *
 * @param input - x: any finite number (1 below 0); degreesOfFreedom: whole, 1 to 1000
 * @returns probability of a value above x, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source Abramowitz, Stegun (1964) 26.4.4, 26.4.5 (finite sums), 26.4.6 (series)
 * @validity relative error below 2e-14; 0 beyond x = 2800, where the tail is below 1e-165
 */
export function chiSquareSurvival(input: ChiSquareInput): number {
  requireWithin({ x: input.x });
  requireWhole({ degreesOfFreedom: input.degreesOfFreedom }, { min: 1, max: 1000 });
  return chiSquareTails(input).upper;
}
