import { storeSentence } from '@fillwright/words/en';
import type { Streams } from './streams.ts';
import { openDocuments, StoreError, type Store } from './usecases/open-documents.ts';

/**
 * Opens the store that the environment names, works with it, and closes it. Trouble of the store becomes its sentence.
 *
 * @param streams - where to write
 * @param isToBeMade - whether a store is made where none is
 * @param work - what to do; returns the exit code
 * @returns the exit code; 3 when the store cannot be used
 */
export async function withStore(
  streams: Streams,
  isToBeMade: boolean,
  work: (store: Store) => Promise<number>,
): Promise<number> {
  let store: Store | undefined;
  try {
    store = await openDocuments(process.env, isToBeMade);
    return await work(store);
  } catch (error) {
    if (!(error instanceof StoreError)) throw error;
    streams.problem(storeSentence(error.code, error.facts));
    return 3;
  } finally {
    await store?.close();
  }
}
