import { openStore } from '../store/open-store.ts';
import type { Store } from '../store/store.ts';

export { StoreError } from '../store/store-error.ts';
export type { Store } from '../store/store.ts';

/** Folder of the store where none is named: in the folder in which the program was started. */
const USUAL_FOLDER = '.fillwright';

/** What the environment says: FILLWRIGHT_DATA names the folder, DATABASE_URL a PostgreSQL server. */
export type StoreEnvironment = Readonly<Record<string, string | undefined>>;

/**
 * Opens the store that the environment names.
 *
 * @param environment - variables of the process
 * @param isToBeMade - whether a store is made where none is; something else is never replaced
 * @returns the store; whoever opened it closes it
 * @throws StoreError with the reason why it cannot be used
 */
export async function openDocuments(environment: StoreEnvironment, isToBeMade: boolean): Promise<Store> {
  const { FILLWRIGHT_DATA, DATABASE_URL } = environment;
  return openStore({ dataFolder: FILLWRIGHT_DATA || USUAL_FOLDER, databaseUrl: DATABASE_URL, isToBeMade });
}
