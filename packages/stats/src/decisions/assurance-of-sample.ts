import type { ConfidenceRegion, SampleOfPlaces } from './confidence-region.ts';
import { confidenceRegion } from './confidence-region.ts';
import { passingBound } from './passing-bound.ts';
import { probabilityOfPassingDosageUnits } from './probability-of-passing-dosage-units.ts';

/** A sample of n units and the target content, in % of claim. */
export interface AssuredSample extends SampleOfPlaces {
  readonly target?: number;
}

export interface Assurance extends ConfidenceRegion {
  /** Least lower bound over the region: the figure of the practice. */
  readonly lowerBound: number;
  /** Least exact probability over the same region: ours, never below `lowerBound` by more than 1e-6. */
  readonly exactProbability: number;
}

/**
 * What a sample assures: with the given confidence, a further sample from the batch would pass the uniformity of dosage units
 * with at least this probability. Once by the bound of the practice, once by the exact probability of passing.
 *
 * @param sample - mean, sd (from 0) in % of claim; n: units, one from each place, whole, from 2; confidence: above 0, below 1;
 *   target: T, default 100
 * @returns the region, the bound and the exact probability
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source ASTM E2709, E2810; J. S. Bergum, H. Li (2007), Pharm. Technol. 31(10); exact: this project's choice
 * @validity independent normal units from all over the batch. Not an inspection of the lot: it says nothing of a fault that no
 *   place shows, and passing the test once assures nothing
 */
export function assuranceOfSample(sample: AssuredSample): Assurance {
  const region = confidenceRegion(sample);
  return { ...region, ...leastOverRegion(region, sample) };
}

/**
 * Least bound and least exact probability over a region: both sink away from the reference zone and with sd, so they are
 * least at an end of the base or, where the mean itself cannot pass, at the tip.
 *
 * @param region - the triangle
 * @param batch - mean (the tip) and target
 * @returns bound of the practice, exact probability
 * @throws StatsError "not-finite", "out-of-range"
 * @source ASTM E2709, E2810; corners against a grid over the region: the test
 */
export function leastOverRegion(
  { upperSd, lowMean, highMean }: ConfidenceRegion,
  { mean, target = 100 }: Pick<AssuredSample, 'mean' | 'target'>,
): Pick<Assurance, 'lowerBound' | 'exactProbability'> {
  const corners = [
    { mean, sd: 0, target },
    { mean: lowMean, sd: upperSd, target },
    { mean: highMean, sd: upperSd, target },
  ];
  return {
    lowerBound: Math.min(...corners.map((corner) => passingBound(corner).bound)),
    exactProbability: Math.min(...corners.map(probabilityOfPassingDosageUnits)),
  };
}
