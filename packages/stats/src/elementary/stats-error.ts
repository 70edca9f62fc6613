/** Why a call was refused. */
export type StatsErrorCode =
  | 'not-a-number'
  | 'not-finite'
  | 'not-positive-definite'
  | 'not-readable'
  | 'not-symmetric'
  | 'not-whole'
  | 'out-of-range'
  | 'sample-size'
  | 'wrong-length';

/**
 * A wrong input. `numbers` holds the offending field under its own name and, where there is one, the allowed range
 * under `min`, `max` (edge allowed), `above`, `below` (edge not allowed).
 *
 * @throws nothing
 * @source house rule: code and numbers, the sentence is made elsewhere
 */
export class StatsError extends Error {
  readonly code: StatsErrorCode;
  readonly numbers: Readonly<Record<string, number>>;

  constructor(code: StatsErrorCode, numbers: Readonly<Record<string, number>>) {
    const parts = Object.entries(numbers).map(([name, value]) => `${name}=${String(value)}`);
    super(`${code}: ${parts.join(' ')}`);
    this.name = 'StatsError';
    this.code = code;
    this.numbers = numbers;
  }
}
