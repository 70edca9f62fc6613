import { chiSquareQuantile, fisherQuantile } from '#distributions';
import { requireWhole, requireWithin, StatsError } from '#elementary';

/** One independent mean square of an analysis of variance and its coefficient in the variance that is wanted. */
export interface MeanSquareTerm {
  readonly meanSquare: number;
  readonly degreesOfFreedom: number;
  readonly coefficient: number;
}

/** Two-sided limits of a variance; the estimate may be negative, the limits are not below 0. */
export interface VarianceLimits {
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
}

/** A term in the form of the method: size c M, its quantile factors at either end. */
interface Part {
  readonly size: number;
  readonly df: number;
  /** 1 - 1/F at the upper point: how far the truth may lie below. */
  readonly below: number;
  /** 1/F - 1 at the lower point: how far above. */
  readonly above: number;
}

/**
 * Limits of a sum or difference of mean squares: the modified large-sample method. For one term it is the exact interval by
 * chi-square; the lower limit of a difference of two is 0 just where the F test turns.
 *
 * @param sum - terms: one or more, mean square from 0, degrees of freedom whole from 1, coefficient of any sign but 0;
 *   confidence: two-sided, above 0, below 1
 * @returns estimate and limits, these not below 0
 * @throws StatsError "sample-size", "not-finite", "not-whole", "out-of-range"
 * @source F. A. Graybill, C.-M. Wang (1980), JASA 75, 869-873 (sums); N. Ting et al. (1990), J. Stat. Comput. Simul. 35, 135-143
 *   (differences): both as in R. K. Burdick, F. A. Graybill, Confidence Intervals on Variance Components (1992), 3 (from memory)
 * @validity independent mean squares of normal values, groups of one size; never much below the confidence asked for
 */
export function meanSquareLimits(sum: {
  readonly terms: readonly MeanSquareTerm[];
  readonly confidence: number;
}): VarianceLimits {
  const { terms, confidence } = sum;
  requireWithin({ confidence }, { above: 0, below: 1 });
  if (terms.length === 0) throw new StatsError('sample-size', { termCount: 0, min: 1 });
  const p = 0.5 * (1 - confidence);
  const [plus, minus]: [Part[], Part[]] = [[], []];
  for (const { meanSquare, degreesOfFreedom, coefficient } of terms) {
    requireWithin({ meanSquare }, { min: 0 });
    requireWhole({ degreesOfFreedom }, { min: 1, max: 1e9 });
    requireWithin({ coefficient });
    if (coefficient === 0) throw new StatsError('out-of-range', { coefficient });
    const part = partOf(Math.abs(coefficient) * meanSquare, degreesOfFreedom, p);
    (coefficient > 0 ? plus : minus).push(part);
  }
  const total = (parts: readonly Part[]): number => parts.reduce((all, { size }) => all + size, 0);
  const estimate = total(plus) - total(minus);
  const down = squareSum(plus, 'below') + squareSum(minus, 'above') + mixed(plus, minus, p) + like(plus, minus, p);
  const up = squareSum(plus, 'above') + squareSum(minus, 'below') + mixedAbove(plus, minus, p) + like(minus, plus, p);
  return {
    estimate,
    low: Math.max(0, estimate - Math.sqrt(Math.max(0, down))),
    high: Math.max(0, estimate + Math.sqrt(Math.max(0, up))),
  };
}

function partOf(size: number, df: number, p: number): Part {
  const at = (tail: 'lower' | 'upper'): number => chiSquareQuantile({ p, degreesOfFreedom: df, tail }) / df;
  return { size, df, below: 1 - 1 / at('upper'), above: 1 / at('lower') - 1 };
}

function squareSum(parts: readonly Part[], key: 'below' | 'above'): number {
  return parts.reduce((sum, part) => sum + part[key] * part[key] * part.size * part.size, 0);
}

/** Cross terms of the lower limit: exact where a difference of two is tested. */
function mixed(plus: readonly Part[], minus: readonly Part[], p: number): number {
  return pairs(plus, minus, (q, r) => {
    const f = fisherQuantile({ p, numeratorDf: q.df, denominatorDf: r.df, tail: 'upper' });
    return ((f - 1) * (f - 1) - q.below * q.below * f * f - r.above * r.above) / f;
  });
}

/** The same of the upper limit. */
function mixedAbove(plus: readonly Part[], minus: readonly Part[], p: number): number {
  return pairs(plus, minus, (q, r) => {
    const f = fisherQuantile({ p, numeratorDf: q.df, denominatorDf: r.df });
    return ((1 - f) * (1 - f) - q.above * q.above * f * f - r.below * r.below) / f;
  });
}

function pairs(plus: readonly Part[], minus: readonly Part[], factor: (q: Part, r: Part) => number): number {
  return plus.reduce((sum, q) => sum + minus.reduce((inner, r) => inner + factor(q, r) * q.size * r.size, 0), 0);
}

/** Cross terms of parts of one sign, used only where the other sign is there too. */
function like(parts: readonly Part[], others: readonly Part[], p: number): number {
  if (parts.length < 2 || others.length === 0) return 0;
  let sum = 0;
  for (const [i, one] of parts.entries()) {
    for (const two of parts.slice(i + 1)) {
      const both = partOf(1, one.df + two.df, p).below * (one.df + two.df);
      const own = (one.below * one.below * one.df) / two.df + (two.below * two.below * two.df) / one.df;
      sum += ((both * both) / (one.df * two.df) - own) * one.size * two.size;
    }
  }
  return sum / (parts.length - 1);
}
