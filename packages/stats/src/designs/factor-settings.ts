import { requireWithin } from '#elementary';

/** A factor of an experiment: what its coded levels -1 and 1 stand for, in the unit of the factor. */
export interface FactorRange {
  readonly low: number;
  readonly high: number;
}

/**
 * Setting of a factor from its coded level.
 *
 * @param task - range: low and high setting, low < high; coded: -1 is low, 0 the middle, 1 high
 * @returns setting, in the unit of the factor
 * @throws StatsError "not-finite", "out-of-range" (high not above low)
 * @source definition: (low + high)/2 + coded (high - low)/2
 */
export function factorSettings(task: { readonly range: FactorRange; readonly coded: readonly number[] }): number[] {
  const { low, high } = task.range;
  requireWithin({ low });
  requireWithin({ high }, { above: low });
  return task.coded.map((coded) => {
    requireWithin({ coded });
    return 0.5 * (low + high) + 0.5 * coded * (high - low);
  });
}
