import { DOCUMENT_KINDS } from '@fillwright/contract/documents';
import { SAVE_WORDS } from '@fillwright/words/en';
import { exampleText } from './example-text.ts';
import { listDocuments } from './list-documents.ts';
import type { Store } from './open-documents.ts';
import { saveVersion } from './save-version.ts';

const EXAMPLE = 'alder-200.brief.yaml';
const NAME = { kind: 'brief', id: 'fw-d01' } as const;

/**
 * Adds the demo product to a store that holds no document at all.
 *
 * @param store - the store
 * @param at - when: ISO 8601 in UTC
 * @returns whether it was added
 */
export async function addDemo(store: Store, at: string): Promise<boolean> {
  for (const kind of DOCUMENT_KINDS) if ((await listDocuments(store, kind)).length > 0) return false;
  const text = await exampleText(EXAMPLE);
  if (text === undefined) return false;
  const saved = await saveVersion(store, NAME, { basedOn: 0, status: 'saved', text, by: SAVE_WORDS.demo, at });
  return saved.outcome === 'kept';
}
