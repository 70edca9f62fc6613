import { StatsError } from '@fillwright/stats/elementary';
import { DomainError } from '#catalogue';

/**
 * Runs a function of stats for the catalogue; its refusal becomes one of the engine's.
 *
 * @param compute - the call
 * @returns what the call returns
 * @throws DomainError "out-of-range" with the facts of the StatsError
 * @source none: bookkeeping
 */
export function fromStats<T>(compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    if (error instanceof StatsError) throw new DomainError('out-of-range', { reason: error.code, ...error.numbers });
    throw error;
  }
}
