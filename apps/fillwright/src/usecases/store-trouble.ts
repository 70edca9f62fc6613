import { storeSentence, type StoreTrouble } from '@fillwright/words/en';
import { StoreError } from '../store/store-error.ts';

/** Troubles whose sentence is for whoever uses the workbench; the others name machines that only the keeper of the server knows. */
const FOR_EVERYBODY: readonly StoreTrouble[] = ['full', 'no-answer', 'read-only', 'closed'];

/** Why the store could not do what was asked. */
export interface Trouble {
  /** What happened, what was kept and what to do. */
  readonly sentence: string;
  readonly isForEverybody: boolean;
}

/**
 * The trouble of the store behind an error.
 *
 * @param error - what was thrown
 * @returns the trouble, or undefined when the error is of something else
 */
export function storeTrouble(error: unknown): Trouble | undefined {
  if (!(error instanceof StoreError)) return undefined;
  return { sentence: storeSentence(error.code, error.facts), isForEverybody: FOR_EVERYBODY.includes(error.code) };
}
