import type { DocumentVersion } from '@fillwright/contract/documents';
import { oneVersion } from '../store/one-version.ts';
import type { Store } from '../store/store.ts';
import type { DocumentName } from './document-name.ts';
import { HERE } from './here.ts';

/**
 * One version of a document.
 *
 * @param store - the store
 * @param name - kind and id
 * @param version - its number, from 1
 * @returns the version; undefined when there is none
 */
export async function readVersion(
  store: Store,
  name: DocumentName,
  version: number,
): Promise<DocumentVersion | undefined> {
  return oneVersion(store, { site: HERE, ...name }, version);
}
