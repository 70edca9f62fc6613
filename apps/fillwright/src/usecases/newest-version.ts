import type { DocumentVersion } from '@fillwright/contract/documents';
import { newestVersion as newest } from '../store/newest-version.ts';
import type { Store } from '../store/store.ts';
import type { DocumentName } from './document-name.ts';
import { HERE } from './here.ts';

/**
 * The newest version of a document.
 *
 * @param store - the store
 * @param name - kind and id
 * @returns the version; undefined when there is no such document
 */
export async function newestVersion(store: Store, name: DocumentName): Promise<DocumentVersion | undefined> {
  return newest(store, { site: HERE, ...name });
}
