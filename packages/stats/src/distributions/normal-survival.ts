import { normalCdf } from './normal-cdf.ts';

/**
 * Probability of a standard normal value above z, accurate in the upper tail.
 *
 * @param z - any number, the infinities included
 * @returns probability of a value above z, 0 to 1
 * @throws StatsError "not-a-number"
 * @source symmetry of the normal law
 * @validity see `normalCdf`
 */
export function normalSurvival(z: number): number {
  return normalCdf(-z);
}
