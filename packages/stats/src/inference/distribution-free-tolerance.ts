import { binomialQuantile, binomialSurvival } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';

/** What order statistics promise whatever the law is. */
export interface DistributionFreeTolerance {
  /** Confidence that the share lies between least and greatest value. */
  readonly confidenceLeastToGreatest: number;
  /** Confidence that the share lies below the greatest value (or above the least). */
  readonly confidenceOneSided: number;
  /**
   * How many of the n + 1 blocks between the sorted values may lie outside at the confidence asked for: limits are the r-th
   * least and the s-th greatest with r + s up to this; 0 where not even one end can be kept.
   */
  readonly blocksOutside: number;
}

/**
 * Tolerance intervals from the order of the values alone.
 *
 * @param input - n: whole, 1 to 1e7; content, confidence: above 0 and below 1
 * @returns confidences at n and how many blocks may be cut off
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source S. S. Wilks (1941), Ann. Math. Stat. 12, 91-96; ISO 16269-6:2014 (secondary)
 * @validity independent values of a continuous law; ties only raise the confidence
 */
export function distributionFreeTolerance(input: {
  readonly n: number;
  readonly content: number;
  readonly confidence: number;
}): DistributionFreeTolerance {
  const { n, content, confidence } = input;
  requireWhole({ n }, { min: 1, max: 1e7 });
  requireWithin({ content, confidence }, { above: 0, below: 1 });
  const outside = { n, p: 1 - content };
  return {
    confidenceLeastToGreatest: binomialSurvival({ k: 1, ...outside }),
    confidenceOneSided: binomialSurvival({ k: 0, ...outside }),
    blocksOutside: binomialQuantile({ probability: 1 - confidence, ...outside, tail: 'lower' }),
  };
}
