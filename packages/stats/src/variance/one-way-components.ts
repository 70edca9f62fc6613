import { chiSquareQuantile, fisherQuantile } from '#distributions';
import { requireWithin } from '#elementary';
import { varianceInterval } from '#inference';
import { cellOf, centred } from './cell-of.ts';
import { type OneWayAnova, oneWayAnova } from './one-way-anova.ts';
import { meanSquareLimits } from './mean-square-limits.ts';
import { remlEstimate } from './reml-estimate.ts';

/** Variances between and within groups; what only groups of one size allow is absent for others. */
export interface OneWayComponents extends OneWayAnova {
  /** Values per group that count: the size of the groups if they have one. */
  readonly effectiveSize: number;
  readonly within: number;
  readonly withinLow: number;
  readonly withinHigh: number;
  /** May be negative. */
  readonly between: number;
  readonly betweenTruncated: number;
  /** Two-sided, not below 0. */
  readonly betweenLow?: number;
  readonly betweenHigh?: number;
  readonly total: number;
  /** Share of the variance between groups in the total, as estimated: may be negative. */
  readonly intraclass: number;
  readonly intraclassLow?: number;
  readonly intraclassHigh?: number;
  /** One-sided. */
  readonly totalUpper?: number;
  readonly reml: {
    readonly between: number;
    readonly within: number;
    readonly criterion: number;
    readonly mean: number;
    readonly meanSe: number;
  };
}

/**
 * Variance components of a one-way random model, by analysis of variance and by restricted maximum likelihood.
 *
 * @param sample - groups: two at least, one of them of two values; confidence: above 0 and below 1, 0.95 unless given
 * @returns both estimates, two-sided limits of the variances within (exact) and between and of the intraclass correlation (exact
 *   F), one-sided upper limit of the total
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (no spread inside any group)
 * @source S. R. Searle, G. Casella, C. E. McCulloch, Variance Components (1992), chapter 3 (from memory); F. A. Graybill,
 *   C.-M. Wang (1980), JASA 75, 869-873 (from memory)
 * @validity normal values; limits of the variance between, of intraclass correlation and total for groups of one size only
 */
export function oneWayComponents(sample: {
  readonly groups: readonly (readonly number[])[];
  readonly confidence?: number;
}): OneWayComponents {
  const { groups, confidence = 0.95 } = sample;
  requireWithin({ confidence }, { above: 0, below: 1 });
  const anova = oneWayAnova({ groups });
  const count = anova.betweenDf + anova.withinDf + 1;
  const squaredSizes = groups.reduce((sum, values) => sum + values.length * values.length, 0);
  const effectiveSize = (count - squaredSizes / count) / anova.betweenDf;
  const within = anova.withinMeanSquare;
  const between = (anova.betweenMeanSquare - within) / effectiveSize;
  const limits = varianceInterval({ variance: within, degreesOfFreedom: anova.withinDf, confidence });
  const { shift, groups: shifted } = centred(groups);
  const { group, ...reml } = remlEstimate(
    shifted.map((values) => [cellOf(values)]),
    false,
  );
  return {
    ...anova,
    ...{ effectiveSize, within, withinLow: limits.low, withinHigh: limits.high },
    ...{ between, betweenTruncated: Math.max(0, between), total: between + within },
    intraclass: between / (between + within),
    ...(groups.every((values) => values.length === groups[0]!.length) &&
      balancedLimits(anova, effectiveSize, confidence)),
    reml: {
      ...{ between: group, within: reml.within, criterion: reml.criterion },
      ...{ mean: shift + reml.mean, meanSe: reml.meanSe },
    },
  };
}

function balancedLimits(anova: OneWayAnova, size: number, confidence: number) {
  const { betweenDf, withinDf, betweenMeanSquare, withinMeanSquare } = anova;
  const law = { numeratorDf: betweenDf, denominatorDf: withinDf, p: 0.5 * (1 - confidence) };
  const share = (f: number): number => (f - 1) / (f + size - 1);
  const reach = (degreesOfFreedom: number): number =>
    degreesOfFreedom / chiSquareQuantile({ p: 1 - confidence, degreesOfFreedom }) - 1;
  const [one, other] = [betweenMeanSquare / size, (1 - 1 / size) * withinMeanSquare];
  const [far, farther] = [one * reach(betweenDf), other * reach(withinDf)];
  const { low, high } = meanSquareLimits({
    terms: [
      { meanSquare: betweenMeanSquare, degreesOfFreedom: betweenDf, coefficient: 1 / size },
      { meanSquare: withinMeanSquare, degreesOfFreedom: withinDf, coefficient: -1 / size },
    ],
    confidence,
  });
  return {
    ...{ betweenLow: low, betweenHigh: high },
    intraclassLow: share(anova.f / fisherQuantile({ ...law, tail: 'upper' })),
    intraclassHigh: share(anova.f / fisherQuantile(law)),
    totalUpper: one + other + Math.sqrt(far * far + farther * farther),
  };
}
