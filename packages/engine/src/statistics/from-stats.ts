import { StatsError } from '@fillwright/stats/elementary';
import { DomainError } from '#catalogue';

/**
 * Runs a function of stats for the catalogue; its refusal becomes one of the engine's.
 *
 * @param compute - the call
 * @returns what the call returns
 * @throws DomainError "out-of-range" with the facts of the StatsError, or because the values are so large that the result is
 *   no number
 * @source none: bookkeeping
 */
export function fromStats<T>(compute: () => T): T {
  try {
    const found = compute();
    if (holdsNaN(found)) throw new DomainError('out-of-range', { reason: 'result-not-a-number' });
    return found;
  } catch (error) {
    if (error instanceof StatsError) throw new DomainError('out-of-range', { reason: error.code, ...error.numbers });
    throw error;
  }
}

function holdsNaN(value: unknown): boolean {
  if (typeof value === 'number') return Number.isNaN(value);
  if (typeof value !== 'object' || value === null) return false;
  return Object.values(value).some(holdsNaN);
}
