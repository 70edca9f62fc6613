import type { DocumentVersionHead } from '@fillwright/contract/documents';
import { versionHeads } from '../store/version-heads.ts';
import type { Store } from '../store/store.ts';
import type { DocumentName } from './document-name.ts';
import { HERE } from './here.ts';

/**
 * All versions of a document.
 *
 * @param store - the store
 * @param name - kind and id
 * @returns the versions without their texts, the oldest first; none when there is no such document
 */
export async function documentHistory(store: Store, name: DocumentName): Promise<readonly DocumentVersionHead[]> {
  return versionHeads(store, { site: HERE, ...name });
}
