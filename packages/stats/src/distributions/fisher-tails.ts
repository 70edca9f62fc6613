import { requireWithin } from '#elementary';
import { betaTails } from './beta-tails.ts';
import type { Tails } from './tail.ts';

/** An F law and a point on it. */
export interface FisherPoint {
  readonly x: number;
  readonly numeratorDf: number;
  readonly denominatorDf: number;
}

/**
 * Both tails of the F law.
 *
 * @param point - x: finite; both degrees of freedom: 0.01 to 1e9
 * @returns lower and upper tail
 * @throws StatsError "not-finite", "out-of-range"
 * @source Abramowitz, Stegun (1964) 26.6.2
 * @validity relative error of the smaller tail below 1e-12
 */
export function fisherTails({ x, numeratorDf, denominatorDf }: FisherPoint): Tails {
  requireWithin({ x });
  requireWithin({ numeratorDf, denominatorDf }, { min: 0.01, max: 1e9 });
  if (x <= 0) return { lower: 0, upper: 1 };
  const odds = (numeratorDf / denominatorDf) * x;
  const inverse = 1 / (1 + odds);
  return betaTails({
    x: odds > 1 ? 1 / (1 + 1 / odds) : odds * inverse,
    y: inverse,
    alpha: 0.5 * numeratorDf,
    beta: 0.5 * denominatorDf,
  });
}
