import type { StoreTrouble } from '@fillwright/words/en';

/** The store cannot be used or could not do what was asked; `words` makes the sentence from code and facts. */
export class StoreError extends Error {
  readonly code: StoreTrouble;
  readonly facts: Readonly<Record<string, string | number>>;

  constructor(code: StoreTrouble, facts: Readonly<Record<string, string | number>>) {
    super(`${code} ${JSON.stringify(facts)}`);
    this.name = 'StoreError';
    this.code = code;
    this.facts = facts;
  }
}
