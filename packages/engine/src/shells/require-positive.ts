import { DomainError } from '#catalogue';

/**
 * Refuses every named value that is not a finite number above 0.
 *
 * @param values - the values under the names the caller knows them by
 * @returns nothing
 * @throws DomainError "not-a-number" (NaN or an infinity), "not-positive"
 * @source house rule: NaN never turns into a result
 */
export function requirePositive(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!Number.isFinite(value)) throw new DomainError('not-a-number', { [name]: value, above: 0 });
    if (value <= 0) throw new DomainError('not-positive', { [name]: value, above: 0 });
  }
}
