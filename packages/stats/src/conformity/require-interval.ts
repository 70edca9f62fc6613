import { requireWithin, StatsError } from '#elementary';
import type { Interval } from './interval-probability.ts';

/**
 * Refuses limits that are none: NaN, no side at all, or the lower not below the upper.
 *
 * @param limits - a side left out is open
 * @param name - how the caller calls them; the error names `nameLow`, `nameHigh`
 * @returns both ends, an open one as an infinity
 * @throws StatsError "not-finite", "out-of-range"
 * @source house rule: NaN never turns into a result
 */
export function requireInterval(limits: { readonly low?: number; readonly high?: number }, name: string): Interval {
  const { low, high } = limits;
  if (low !== undefined) requireWithin({ [`${name}Low`]: low });
  if (high !== undefined) requireWithin({ [`${name}High`]: high });
  if (low === undefined && high === undefined) throw new StatsError('out-of-range', { [`${name}Count`]: 0, min: 1 });
  if (low !== undefined && high !== undefined) requireWithin({ [`${name}High`]: high }, { above: low });
  return { low: low ?? -Infinity, high: high ?? Infinity };
}
