import type { ChiSquareInput } from './chi-square-tails.ts';
import { chiSquareTails } from './chi-square-tails.ts';

/**
 * Probability of a chi-square value above x, accurate in the upper tail.
 *
 * @param input - x: any finite number (1 below 0); degreesOfFreedom: 0.01 to 1e9, whole or not
 * @returns probability of a value above x, 0 to 1
 * @throws StatsError "not-finite", "out-of-range"
 * @source Abramowitz, Stegun (1964) 26.4.4, 26.4.5 (finite sums), 26.4.6 (series), 26.4.19 (gamma law)
 * @validity relative error below 2e-14 for whole degrees of freedom up to 1000, else below 1e-12
 */
export function chiSquareSurvival(input: ChiSquareInput): number {
  return chiSquareTails(input).upper;
}
