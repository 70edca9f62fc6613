import { normalQuantile } from '#distributions';
import { requireWithin, StatsError } from '#elementary';
import type { Assurance } from './assurance-of-sample.ts';
import { leastOverRegion } from './assurance-of-sample.ts';
import { upperVarianceRatio } from './confidence-region.ts';
import { sampleMoments } from './sample-moments.ts';

/** Contents in % of claim, place by place. */
export interface ContentsOfPlaces {
  readonly places: readonly (readonly number[])[];
  readonly confidence: number;
  readonly target?: number;
}

export interface AssuranceOfPlaces extends Assurance {
  readonly mean: number;
  /** Mean squares between and within places. */
  readonly meanSquareBetween: number;
  readonly meanSquareWithin: number;
  /** Standard deviation of a unit taken anywhere: places and units together. */
  readonly totalSd: number;
}

/**
 * What several units from each of several places assure (`assuranceOfSample` is for one unit from each). The upper limit of
 * the total variance, MSB/m + (1 - 1/m) MSW, is that of Graybill and Wang; the mean has at most the standard error
 * sigma/sqrt(places).
 *
 * @param sample - places: at least 2, each with the same number of at least 2 units; confidence: above 0, below 1; target: T,
 *   default 100
 * @returns mean squares, the region, the bound of the practice and the exact probability
 * @throws StatsError "sample-size" (too few), "wrong-length" (unequal numbers), "not-finite", "out-of-range"
 * @source ASTM E2709, E2810, sampling plan 2 (from memory); F. A. Graybill, C.-M. Wang (1980), J. Am. Stat. Assoc. 75
 * @validity normal effects of places and units. That the standard error takes the number of places is our reading: it is
 *   conservative; the limit of the variance is approximate
 */
export function assuranceOfPlaces({ places, confidence, target = 100 }: ContentsOfPlaces): AssuranceOfPlaces {
  requireWithin({ confidence }, { above: 0, below: 1 });
  const placeCount = places.length;
  const unitCount = places[0]?.length ?? 0;
  if (placeCount < 2 || unitCount < 2) throw new StatsError('sample-size', { placeCount, unitCount });
  for (const place of places) {
    if (place.length !== unitCount) throw new StatsError('wrong-length', { unitCount, found: place.length });
    for (const content of place) requireWithin({ content });
  }
  const moments = places.map(sampleMoments);
  const { mean, sd } = sampleMoments(moments.map((place) => place.mean));
  const parts = {
    between: { meanSquare: unitCount * sd * sd, share: 1 / unitCount, df: placeCount - 1 },
    within: {
      meanSquare: moments.reduce((sum, place) => sum + place.sd * place.sd, 0) / placeCount,
      share: 1 - 1 / unitCount,
      df: placeCount * (unitCount - 1),
    },
  };
  const each = Math.sqrt(confidence);
  const { total, upper } = totalVariance([parts.between, parts.within], each);
  const upperSd = Math.sqrt(upper);
  const z = normalQuantile((1 + each) / 2);
  const half = (z * upperSd) / Math.sqrt(placeCount);
  const region = { z, upperSd, lowMean: mean - half, highMean: mean + half };
  return {
    ...{ mean, meanSquareBetween: parts.between.meanSquare, meanSquareWithin: parts.within.meanSquare },
    ...{ totalSd: Math.sqrt(total), ...region, ...leastOverRegion(region, { mean, target }) },
  };
}

interface VariancePart {
  readonly meanSquare: number;
  readonly share: number;
  readonly df: number;
}

function totalVariance(parts: readonly VariancePart[], confidence: number): { total: number; upper: number } {
  let total = 0;
  let squares = 0;
  for (const { meanSquare, share, df } of parts) {
    const part = share * meanSquare;
    const excess = (upperVarianceRatio({ degreesOfFreedom: df, confidence }) - 1) * part;
    total += part;
    squares += excess * excess;
  }
  return { total, upper: total + Math.sqrt(squares) };
}
