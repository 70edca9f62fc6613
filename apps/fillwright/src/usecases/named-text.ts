import { fileDocument } from '@fillwright/contract/documents';
import { exampleText } from './example-text.ts';
import { newestVersion } from './newest-version.ts';
import type { Store } from './open-documents.ts';

/**
 * Text of a file that a kept brief names. Such a brief has no folder beside it: the newest version that is kept under the
 * name counts, else the file of that name that comes with the program.
 *
 * @param store - the store
 * @param path - as the brief names it
 * @returns the text
 * @throws Error when neither is there
 */
export async function namedText(store: Store, path: string): Promise<string> {
  const document = fileDocument(path);
  const kept = document && (await newestVersion(store, document));
  const text = kept?.text ?? (await exampleText(path));
  if (text === undefined) throw new Error(`no file ${path}`);
  return text;
}
