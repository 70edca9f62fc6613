import { requireWithin, StatsError } from '#elementary';

/** Specification limits, one at least, in the unit of the data. */
export interface CapabilityLimits {
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
}

/**
 * Refuses limits that are none.
 *
 * @param limits - one at least; of two the lower below the upper
 * @returns nothing
 * @throws StatsError "not-finite", "out-of-range"
 * @source house rule: NaN never turns into a result
 */
export function requireCapabilityLimits({ lower, upper }: CapabilityLimits): void {
  if (lower !== undefined) requireWithin({ lower });
  if (upper !== undefined) requireWithin({ upper }, lower === undefined ? {} : { above: lower });
  if (lower === undefined && upper === undefined) throw new StatsError('out-of-range', { limitCount: 0, min: 1 });
}
