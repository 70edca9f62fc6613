import { requireWhole, requireWithin, StatsError } from '#elementary';
import { LARGEST_ACCEPTANCE_VALUE, referenceZone } from './dosage-unit-rules.ts';
import { stageProbability } from './stage-probability.kernel.ts';

/** Normal contents of single units, the number of units tested and a limit, in % of claim. */
export interface AcceptanceValueLimit {
  readonly mean: number;
  readonly sd: number;
  readonly n: number;
  readonly target?: number;
  readonly limit?: number;
}

/**
 * Probability that the acceptance value of n units is at most a limit, for independent normal contents.
 *
 * @param input - mean, sd (from 0) of the batch in % of claim; n: 10 or 30; target: T, above 0, at most 120, default 100;
 *   limit: from 0, default 15
 * @returns probability, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"; "sample-size" (n is neither 10 nor 30)
 * @source Ph. Eur. 2.9.40, table 2.9.40.-2; see SOURCES.md for the calculation
 * @validity error below 1e-8; the limits of single units at stage 2 are not part of it
 */
export function probabilityAcceptanceValueWithin(input: AcceptanceValueLimit): number {
  const { mean, sd, n, target = 100, limit = LARGEST_ACCEPTANCE_VALUE } = input;
  requireWithin({ mean });
  requireWithin({ sd, limit }, { min: 0 });
  requireWithin({ target }, { above: 0, max: 120 });
  requireWhole({ n });
  if (n !== 10 && n !== 30) throw new StatsError('sample-size', { n });
  return stageProbability({ mean, meanSd: sd / Math.sqrt(n), sd, n, zone: referenceZone(target) }, limit);
}
