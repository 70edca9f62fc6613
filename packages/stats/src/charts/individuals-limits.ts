import { requireWithin, StatsError } from '#elementary';
import { chartConstants } from './chart-constants.ts';
import type { ControlLimits } from './control-limits.ts';

export interface IndividualsLimits {
  readonly mean: number;
  readonly meanMovingRange: number;
  /** Mean moving range divided by d2 of two values. */
  readonly sigma: number;
  /** Standard deviation of all values, n - 1 form; above sigma where the values drift or are correlated. */
  readonly overallSd: number;
  readonly individuals: ControlLimits;
  readonly movingRanges: ControlLimits;
}

/**
 * Limits of a chart of single values and a chart of moving ranges of two neighbours.
 *
 * @param input - values: three or more, in time order
 * @returns mean, mean moving range, estimate of sigma, overall standard deviation, limits of both charts
 * @throws StatsError "sample-size", "not-finite"
 * @source ISO 7870-2 (secondary): mean +- 3 MRbar/d2, 0 to D4 MRbar; worked example NIST/SEMATECH e-Handbook 6.3.2.2
 * @validity independent values: on correlated weights sigma from the moving range is too small and false alarms follow
 */
export function individualsLimits({ values }: { readonly values: readonly number[] }): IndividualsLimits {
  if (values.length < 3) throw new StatsError('sample-size', { valueCount: values.length, min: 3 });
  for (const value of values) requireWithin({ value });
  const { d2, D4, E2 } = chartConstants({ n: 2 });
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) * (value - mean), 0);
  let steps = 0;
  for (let i = 1; i < values.length; i++) steps += Math.abs(values[i]! - values[i - 1]!);
  const meanMovingRange = steps / (values.length - 1);
  return {
    ...{ mean, meanMovingRange, sigma: meanMovingRange / d2, overallSd: Math.sqrt(squares / (values.length - 1)) },
    individuals: { centre: mean, lower: mean - E2 * meanMovingRange, upper: mean + E2 * meanMovingRange },
    movingRanges: { centre: meanMovingRange, lower: 0, upper: D4 * meanMovingRange },
  };
}
