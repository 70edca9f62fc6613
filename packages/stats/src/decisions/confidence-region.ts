import { chiSquareQuantile, normalQuantile } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';

/** Mean and standard deviation of a sample of n units, each from another place, in % of claim. */
export interface SampleOfPlaces {
  readonly mean: number;
  readonly sd: number;
  readonly n: number;
  readonly confidence: number;
}

/** Multipliers of the region: half width z sigma / sqrt(n) at sigma, sigma up to factor s. */
export interface RegionShape {
  readonly z: number;
  readonly sdFactor: number;
}

/** Triangle with its tip at (mean, 0) and its base at `upperSd`, from `lowMean` to `highMean`. */
export interface ConfidenceRegion {
  readonly z: number;
  readonly upperSd: number;
  readonly lowMean: number;
  readonly highMean: number;
}

/**
 * z and the factor of the standard deviation: two statements, each at the square root of the confidence. Mean and standard
 * deviation of a normal sample are independent, so both hold together with the confidence asked for.
 *
 * @param input - n: units, whole, from 2; confidence: above 0, below 1
 * @returns z, two-sided, and upper sd / s = sqrt((n - 1)/chi-square quantile)
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source ASTM E2709, E2810; J. S. Bergum, H. Li (2007), Pharm. Technol. 31(10)
 */
export function regionShape({ n, confidence }: Pick<SampleOfPlaces, 'n' | 'confidence'>): RegionShape {
  requireWhole({ n }, { min: 2 });
  requireWithin({ confidence }, { above: 0, below: 1 });
  const each = Math.sqrt(confidence);
  return {
    z: normalQuantile((1 + each) / 2),
    sdFactor: Math.sqrt(upperVarianceRatio({ degreesOfFreedom: n - 1, confidence: each })),
  };
}

/**
 * Degrees of freedom over the chi-square value that is exceeded with the given confidence: upper limit of a variance over
 * its estimate.
 *
 * @param input - degreesOfFreedom: whole, from 1; confidence: of the upper limit, above 0, below 1
 * @returns ratio
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source definition of the chi-square law
 */
export function upperVarianceRatio({
  degreesOfFreedom,
  confidence,
}: {
  readonly degreesOfFreedom: number;
  readonly confidence: number;
}): number {
  return degreesOfFreedom / chiSquareQuantile({ p: 1 - confidence, degreesOfFreedom });
}

/**
 * Joint region for mean and standard deviation of the batch that the sample comes from.
 *
 * @param sample - mean; sd (n - 1 form, from 0); n: units, whole, from 2; confidence: of the whole region, above 0, below 1
 * @returns z, upper sd, and the ends of the base
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source ASTM E2709, E2810; the triangle is B. W. Lindgren's (from memory)
 * @validity independent normal units, one from each place
 */
export function confidenceRegion({ mean, sd, n, confidence }: SampleOfPlaces): ConfidenceRegion {
  requireWithin({ mean });
  requireWithin({ sd }, { min: 0 });
  const { z, sdFactor } = regionShape({ n, confidence });
  const upperSd = sdFactor * sd;
  const half = (z * upperSd) / Math.sqrt(n);
  return { z, upperSd, lowMean: mean - half, highMean: mean + half };
}
