import { normalQuantile } from '#distributions';
import { requireWithin, StatsError } from '#elementary';
import { type AliasedFactor, aliasedFactors } from './aliased-factors.ts';
import { centred } from './cell-of.ts';
import { crossedReml } from './crossed-reml.ts';
import { type FactorColumns, factorColumns, type GivenFactor } from './factor-columns.ts';

/** One level of a factor. */
export interface LevelEffect {
  readonly level: number | string;
  readonly count: number;
  /** Mean of its values less the mean of all: what a table of means shows. */
  readonly raw: number;
  /** Shrunken towards 0 by what chance alone would do. */
  readonly effect: number;
  readonly standardError: number;
  /** Limits that hold for all levels of the factor together. */
  readonly low: number;
  readonly high: number;
  /** Both limits on one side of 0. */
  readonly isOdd: boolean;
}

export interface FactorEffects {
  readonly name: string;
  readonly variance: number;
  readonly levels: readonly LevelEffect[];
}

/** Effects of crossed places. */
export interface CrossedEffects {
  readonly mean: number;
  readonly meanSe: number;
  readonly within: number;
  readonly criterion: number;
  /** Those that were fitted; of two that are the same only the first, one with a single level not at all. */
  readonly factors: readonly FactorEffects[];
  readonly aliased: readonly AliasedFactor[];
}

/** Levels that one fit may have together. */
const MOST_LEVELS = 400;

/**
 * Effects of places (dosing group x bore, column, carrier, stroke) on single values, crossed in any way, by restricted maximum
 * likelihood: each level's effect is shrunken, so that the largest of many is not taken for a fault because it is the largest.
 * Factors that the sample cannot tell apart are named.
 *
 * @param sample - values: three at least; factors: one or more, a level for each value; confidence: of the limits of all levels
 *   of one factor together, above 0, below 1, 0.95 unless given
 * @returns variances, effects with simultaneous limits, aliased factors
 * @throws StatsError "sample-size" (too few values, no factor that varies, more than 400 levels, a level for every value),
 *   "wrong-length", "not-finite", "out-of-range" (no spread within)
 * @source C. R. Henderson (1975), Biometrics 31, 423-447; G. K. Robinson (1991), Stat. Sci. 6, 15-32 (from memory); limits:
 *   Bonferroni over the levels of a factor
 * @validity additive effects, normal, the variances taken as known in the limits: with few levels these are too narrow. A
 *   contained factor (a group that follows from the carrier) keeps only what its carriers have in common
 */
export function crossedEffects(sample: {
  readonly values: readonly number[];
  readonly factors: readonly GivenFactor[];
  readonly confidence?: number;
}): CrossedEffects {
  const { values, factors, confidence = 0.95 } = sample;
  requireWithin({ confidence }, { above: 0, below: 1 });
  if (values.length < 3) throw new StatsError('sample-size', { count: values.length, min: 3 });
  const { shift, groups } = centred([values]);
  const columns = factors.map((factor) => factorColumns(factor, values.length));
  const aliased = aliasedFactors(columns);
  const left = new Set(aliased.filter(({ kind }) => kind !== 'contained').map(({ name }) => name));
  const fitted = columns.filter(({ name }) => !left.has(name));
  const levelCount = fitted.reduce((sum, { levels }) => sum + levels.length, 0);
  if (fitted.length === 0 || levelCount > MOST_LEVELS)
    throw new StatsError('sample-size', { levelCount, min: 2, max: MOST_LEVELS });
  for (const { levels } of fitted)
    if (levels.length >= values.length)
      throw new StatsError('sample-size', { levelCount: levels.length, count: values.length });
  const shifted = groups[0]!;
  const found = crossedReml(shifted, fitted);
  return {
    ...{ mean: shift + found.mean, meanSe: found.meanSe, within: found.within, criterion: found.criterion, aliased },
    factors: fitted.map((factor, k) => ({
      ...{ name: factor.name, variance: found.variances[k]! },
      levels: levelEffects(factor, {
        ...{ values: shifted, confidence },
        ...{ effects: found.effects[k]!, standardErrors: found.standardErrors[k]! },
      }),
    })),
  };
}

interface Found {
  readonly values: readonly number[];
  readonly confidence: number;
  readonly effects: readonly number[];
  readonly standardErrors: readonly number[];
}

function levelEffects({ levels, at, counts }: FactorColumns, found: Found): readonly LevelEffect[] {
  const { values, confidence, effects, standardErrors } = found;
  const reach = -normalQuantile((1 - confidence) / (2 * levels.length));
  const sums = levels.map(() => 0);
  for (const [i, value] of values.entries()) sums[at[i]!]! += value;
  return levels.map((level, j) => {
    const [effect, standardError] = [effects[j]!, standardErrors[j]!];
    const [low, high] = [effect - reach * standardError, effect + reach * standardError];
    return {
      ...{ level, count: counts[j]!, raw: sums[j]! / counts[j]!, effect, standardError, low, high },
      isOdd: low > 0 || high < 0,
    };
  });
}
