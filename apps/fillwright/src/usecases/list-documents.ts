import type { DocumentKind, DocumentVersionHead } from '@fillwright/contract/documents';
import { documentHeads } from '../store/document-heads.ts';
import type { Store } from '../store/store.ts';
import { HERE } from './here.ts';

/**
 * The documents of a kind.
 *
 * @param store - the store
 * @param kind - the kind
 * @returns the newest version of each without its text, the one that was changed last first
 */
export async function listDocuments(store: Store, kind: DocumentKind): Promise<readonly DocumentVersionHead[]> {
  return documentHeads(store, { site: HERE, kind });
}
