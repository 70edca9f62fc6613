import type { FileDocument } from '@fillwright/contract/documents';
import { FILE_WORDS } from '@fillwright/words/en';
import { fileName } from './file-name.ts';

/** A file that was opened, by what it holds; or why it is not taken, as one sentence. */
export type SortedFile =
  | { readonly is: 'brief' }
  | {
      readonly is: 'file';
      readonly document: FileDocument;
      /** File name by which a brief finds it. */
      readonly called: string;
    }
  | { readonly is: 'refused'; readonly sentence: string };

/** A file that a brief names and that is asked for. */
export interface AskedFile {
  readonly document: FileDocument;
  /** Path as the brief names it. */
  readonly file: string;
}

/**
 * Sorts a file by what it holds. One that a brief asks for is kept under the name that the brief gives it, whatever it is
 * called here: browsers rename copies.
 *
 * @param opened - name and text
 * @param asked - left out: any file of ours is welcome
 * @returns what it is
 */
export async function sortFile(
  { name, text }: { readonly name: string; readonly text: string },
  asked?: AskedFile,
): Promise<SortedFile> {
  const [{ fileDocument }, { fileKind }] = await Promise.all([
    import('@fillwright/contract/documents'),
    import('@fillwright/contract/files'),
  ]);
  const found = fileKind(name, text);
  if (found.is === 'unknown') return refused(FILE_WORDS.unknown(name));
  if (found.is === 'contradicting') return refused(FILE_WORDS.contradicting(name, found.called, found.holds));
  const { is } = found;
  if (asked && is !== asked.document.kind)
    return refused(FILE_WORDS.notAsked({ name, is, asked: asked.document.kind, file: asked.file }));
  if (is === 'brief') return { is };
  if (asked) return { is: 'file', document: asked.document, called: asked.file.split('/').at(-1) ?? asked.file };
  const document = fileDocument(name, is);
  if (!document) return refused(FILE_WORDS.unknown(name));
  return { is: 'file', document, called: fileDocument(name)?.id === document.id ? name : fileName(document) };
}

function refused(sentence: string): SortedFile {
  return { is: 'refused', sentence };
}
