import { requireWithin } from '#elementary';
import type { FactorRange } from './factor-settings.ts';

/**
 * Coded level of a factor from its setting: before squaring, always.
 *
 * @param task - range: low and high setting, low < high; settings in the unit of the factor
 * @returns coded levels, -1 at low and 1 at high
 * @throws StatsError "not-finite", "out-of-range" (high not above low)
 * @source definition: (setting - middle) / half the range
 */
export function codedLevels(task: { readonly range: FactorRange; readonly settings: readonly number[] }): number[] {
  const { low, high } = task.range;
  requireWithin({ low });
  requireWithin({ high }, { above: low });
  return task.settings.map((setting) => {
    requireWithin({ setting });
    return (setting - 0.5 * (low + high)) / (0.5 * (high - low));
  });
}
