import { requireWithin } from '#elementary';
import { bracketedRoot } from '#numerics';
import { FACTOR_OF_10, referenceZone } from './dosage-unit-rules.ts';
import type { StageLaw } from './stage-probability.kernel.ts';
import { stageProbability } from './stage-probability.kernel.ts';

/** Contents of the units of a batch whose own mean is uncertain, in % of claim, and the wanted probabilities. */
export interface UncertainDosageUnits {
  readonly mean: number;
  readonly sd: number;
  readonly biasSd: number;
  readonly target?: number;
  readonly probabilities: readonly number[];
}

const REACH = 9;
/** sqrt(120/9): no sample standard deviation of 10 units is larger, in units of sigma. */
const LARGEST_SD_RATIO = 3.7;

/**
 * Quantiles of the acceptance value of 10 units over both what the batch mean may be, normal about `mean` with `biasSd`,
 * and which 10 units are taken, normal about the batch mean with `sd`. Computed from the distribution function, not
 * simulated: the mean of the 10 has variance sd^2/10 + biasSd^2 and is independent of their standard deviation.
 *
 * @param units - mean; sd, biasSd (from 0) in % of claim; target: T, above 0, at most 120, default 100; probabilities:
 *   any number of them, each above 0 and below 1
 * @returns one acceptance value for each probability, in the same order
 * @throws StatsError "not-finite", "out-of-range"
 * @source Ph. Eur. 2.9.40, table 2.9.40.-2; see SOURCES.md for the calculation
 * @validity absolute error below 1e-6; normal contents only
 */
export function acceptanceValueQuantiles(units: UncertainDosageUnits): number[] {
  const { mean, sd, biasSd, target = 100, probabilities } = units;
  requireWithin({ mean });
  requireWithin({ sd, biasSd }, { min: 0 });
  requireWithin({ target }, { above: 0, max: 120 });
  for (const probability of probabilities) requireWithin({ probability }, { above: 0, below: 1 });
  const law: StageLaw = {
    mean,
    meanSd: Math.sqrt((sd * sd) / 10 + biasSd * biasSd),
    sd,
    n: 10,
    zone: referenceZone(target),
  };
  return probabilities.map((probability) => quantile(law, probability));
}

function quantile(law: StageLaw, probability: number): number {
  const { mean, meanSd, sd, zone } = law;
  const farthest = Math.max(zone.low - mean, mean - zone.high, 0);
  if (meanSd === 0) return farthest;
  const excess = (limit: number): number => stageProbability(law, limit) - probability;
  if (excess(0) >= 0) return 0;
  const largest = farthest + REACH * meanSd + LARGEST_SD_RATIO * FACTOR_OF_10 * sd;
  return bracketedRoot(excess, { from: 0, to: largest, tolerance: 1e-9 * largest });
}
