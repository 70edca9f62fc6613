import { fisherSurvival } from '#distributions';
import { requireWithin, StatsError } from '#elementary';
import { carriedSum } from './carried-sum.ts';
import { cellOf, centred } from './cell-of.ts';

/** Analysis of variance of groups. */
export interface OneWayAnova {
  readonly betweenDf: number;
  readonly withinDf: number;
  readonly betweenSumOfSquares: number;
  readonly withinSumOfSquares: number;
  readonly betweenMeanSquare: number;
  readonly withinMeanSquare: number;
  readonly f: number;
  readonly p: number;
  readonly rSquared: number;
  readonly residualSd: number;
}

/**
 * One-way analysis of variance.
 *
 * @param sample - groups: two at least, of one value each at least, one of them of two
 * @returns degrees of freedom, sums of squares, mean squares, F with its p value, share explained, sd inside the groups
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (no spread inside any group)
 * @source R. A. Fisher (1925) (from memory); NIST StRD, analysis of variance (secondary)
 * @validity p: independent normal values of one variance; sums to what the data as doubles allow
 */
export function oneWayAnova(sample: { readonly groups: readonly (readonly number[])[] }): OneWayAnova {
  const groupCount = sample.groups.length;
  const count = sample.groups.reduce((sum, values) => sum + values.length, 0);
  if (groupCount < 2 || count <= groupCount) throw new StatsError('sample-size', { groupCount, count });
  const cells = centred(sample.groups).groups.map(cellOf);
  const grand = carriedSum(cells.map((cell) => cell.count * cell.mean)) / count;
  const between = carriedSum(cells.map((cell) => cell.count * (cell.mean - grand) * (cell.mean - grand)));
  const within = carriedSum(cells.map(({ sumOfSquares }) => sumOfSquares));
  requireWithin({ withinSumOfSquares: within }, { above: 0 });
  const [betweenDf, withinDf] = [groupCount - 1, count - groupCount];
  const [betweenMeanSquare, withinMeanSquare] = [between / betweenDf, within / withinDf];
  const f = betweenMeanSquare / withinMeanSquare;
  return {
    ...{ betweenDf, withinDf, betweenMeanSquare, withinMeanSquare, f },
    ...{ betweenSumOfSquares: between, withinSumOfSquares: within },
    p: fisherSurvival({ x: f, numeratorDf: betweenDf, denominatorDf: withinDf }),
    rSquared: between / (between + within),
    residualSd: Math.sqrt(withinMeanSquare),
  };
}
