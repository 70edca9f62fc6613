import { requireWhole, requireWithin } from '#elementary';
import { binomialSurvival } from '#distributions';

/** A confidence that misses by less than this counts as reached. */
const GUARD = 1e-12;

/**
 * Least number of values for a tolerance interval from their order alone.
 *
 * @param input - content, confidence: above 0 and below 1; blocksOutside: 1 (one-sided: below the greatest value, unless given)
 *   or 2 (least to greatest) and more
 * @returns the number
 * @throws StatsError "not-finite", "out-of-range" (more than 1e9 would be needed), "not-whole"
 * @source S. S. Wilks (1941), Ann. Math. Stat. 12, 91-96; ISO 16269-6:2014 (secondary)
 * @validity independent values of a continuous law
 */
export function distributionFreeSampleSize(input: {
  readonly content: number;
  readonly confidence: number;
  readonly blocksOutside?: number;
}): number {
  const { content, confidence, blocksOutside = 1 } = input;
  requireWithin({ content, confidence }, { above: 0, below: 1 });
  requireWhole({ blocksOutside }, { min: 1, max: 1e6 });
  const isEnough = (n: number): boolean =>
    binomialSurvival({ k: blocksOutside - 1, n, p: 1 - content }) >= confidence - GUARD;
  let [low, high] = [blocksOutside - 1, blocksOutside];
  while (!isEnough(high)) {
    low = high;
    high *= 2;
    requireWithin({ sampleSize: high }, { max: 1e9 });
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (isEnough(middle)) high = middle;
    else low = middle;
  }
  return high;
}
