/** Every reason for which a computation of the engine refuses its input. `words` has a sentence for each, `docs/problems.md` a row. */
export const DOMAIN_ERROR_CODES = [
  'bore-too-wide',
  'excipients-above-total',
  'invalid-input',
  'mass-shares-not-one',
  'no-geometry',
  'not-a-number',
  'not-positive',
  'out-of-range',
  'scale-unknown',
  'tapped-below-bulk',
  'unknown-method',
  'unlike-lengths',
] as const;

export type DomainErrorCode = (typeof DOMAIN_ERROR_CODES)[number];

/** What an error carries: numbers and short names, never sentences. */
export type Facts = Readonly<Record<string, number | string | readonly number[] | readonly string[]>>;

/** A wrong input. `message` is code and numbers for developers; the sentence for a person is made by `words`. */
export class DomainError extends Error {
  readonly code: DomainErrorCode;
  readonly facts: Facts;
  constructor(code: DomainErrorCode, facts: Facts = {}) {
    super(`${code} ${JSON.stringify(facts)}`);
    this.name = 'DomainError';
    this.code = code;
    this.facts = facts;
  }
}
