import { DomainError } from '@fillwright/engine/catalogue';
import { candidateAt, placesOf, type Candidate, type Place, type SearchInput } from '@fillwright/engine/design';
import { COMPUTING_WORDS, domainErrorSentence } from '@fillwright/words/en';
import { NotComputed, type DesignWorker } from './design-calls.ts';
import type { Choice } from './workbench-state.ts';

/** Computes at once what a lever moves; the worker, which does the rest, is started when it is first needed. */
export class Computing {
  readonly #start: () => DesignWorker;
  #worker: DesignWorker | undefined;
  #places: { readonly input: SearchInput; readonly list: readonly Place[] } | undefined;

  constructor(start: () => DesignWorker) {
    this.#start = start;
  }

  get worker(): DesignWorker {
    return (this.#worker ??= this.#start());
  }

  /** @returns the candidate where the levers stand, or a sentence why there is none */
  candidate(input: SearchInput, choice: Choice): Candidate | string {
    try {
      if (this.#places?.input !== input) this.#places = { input, list: placesOf(input).places };
      const place = this.#places.list.find(
        ({ record, method }) => record.size === choice.size && method.id === choice.method,
      );
      return place
        ? candidateAt(input, place, choice.settings)
        : domainErrorSentence('no-geometry', { size: choice.size });
    } catch (error) {
      if (error instanceof DomainError) return domainErrorSentence(error.code, error.facts);
      throw error;
    }
  }
}

/** @returns why nothing was computed, as a sentence */
export function failureOf(error: unknown): string {
  return error instanceof NotComputed ? error.message : COMPUTING_WORDS.broken;
}
