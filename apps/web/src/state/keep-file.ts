import type { FileDocument } from '@fillwright/contract/documents';
import { saveVersion } from './documents-client.ts';
import { keptVersion } from './named-file.ts';
import { personName } from './person.ts';

/** What became of a file that was opened. */
export type KeptFile =
  | { readonly kind: 'kept' | 'same'; readonly version: number }
  /** Somebody kept a newer version between looking and keeping. */
  | { readonly kind: 'newer' };

interface OpenedText {
  readonly text: string;
  /** What is in order is a saved version; anything else is a draft, so that it can be corrected here. */
  readonly isInOrder: boolean;
  /** Why an older version is superseded. */
  readonly reason: string;
}

/**
 * Keeps the text of an opened file as the next version of its document.
 *
 * @param document - kind and id
 * @param opened - the text, and what is known of it
 * @returns the version; `same` when the newest version has this text already
 * @throws ServerProblem when the server does not answer or refuses
 */
export async function keepFile(document: FileDocument, opened: OpenedText): Promise<KeptFile> {
  const { text, isInOrder, reason } = opened;
  const newest = await keptVersion(document);
  if (newest?.text === text) return { kind: 'same', version: newest.version };
  const saved = await saveVersion(document, {
    basedOn: newest?.version ?? 0,
    status: isInOrder ? 'saved' : 'draft',
    text,
    by: personName(),
    ...(newest ? { reason } : {}),
  });
  return saved.kind === 'kept' ? { kind: 'kept', version: saved.version.version } : { kind: 'newer' };
}
