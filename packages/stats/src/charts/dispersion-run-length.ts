import { chiSquareCdf, chiSquareSurvival } from '#distributions';
import { requireWithin } from '#elementary';
import { chartConstants } from './chart-constants.ts';
import { rangeSurvival } from './range-survival.ts';

export interface DispersionChart {
  readonly subgroupSize: number;
  /** Standard deviation of the values divided by the one for which the limits were made. */
  readonly sigmaRatio: number;
}

/**
 * Mean run lengths of a chart of ranges and of a chart of standard deviations with three-sigma limits for a known sigma.
 *
 * @param input - subgroupSize 2 to 1000; sigmaRatio above 0, up to 100
 * @returns mean number of points up to the signal for both charts
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source limits D1, D2 and B5, B6; law of the range by integration, (n-1) s^2/sigma^2 is chi-square with n - 1 degrees of freedom
 * @validity normal independent values; the laws are skew, so that the mean run length in control is far from 370
 */
export function dispersionRunLength({ subgroupSize, sigmaRatio }: DispersionChart): { ranges: number; sds: number } {
  requireWithin({ sigmaRatio }, { above: 0, max: 100 });
  const { D1, D2, B5, B6 } = chartConstants({ n: subgroupSize });
  const range = (bound: number): number => rangeSurvival({ range: bound / sigmaRatio, count: subgroupSize });
  const degreesOfFreedom = subgroupSize - 1;
  const square = (bound: number): { x: number; degreesOfFreedom: number } => ({
    ...{ x: degreesOfFreedom * (bound / sigmaRatio) * (bound / sigmaRatio), degreesOfFreedom },
  });
  return {
    ranges: 1 / (range(D2) + 1 - range(D1)),
    sds: 1 / (chiSquareSurvival(square(B6)) + chiSquareCdf(square(B5))),
  };
}
