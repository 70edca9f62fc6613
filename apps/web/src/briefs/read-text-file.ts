import { FILE_WORDS } from '@fillwright/words/en';

/**
 * The text of a file that a person chose or dropped.
 *
 * @param file - name and content
 * @returns the text without a byte order mark, or why it is not taken, as one sentence
 */
export async function readTextFile(
  file: Pick<File, 'name' | 'size' | 'arrayBuffer'>,
): Promise<{ readonly ok: true; readonly text: string } | { readonly ok: false; readonly sentence: string }> {
  const { LONGEST_TEXT } = await import('@fillwright/contract/documents');
  if (file.size > LONGEST_TEXT) return { ok: false, sentence: FILE_WORDS.tooLong(file.name, String(LONGEST_TEXT)) };
  const text = await utf8Of(file);
  if (text === undefined || text.trim() === '' || /[\u0000-\u0008]/.test(text))
    return { ok: false, sentence: FILE_WORDS.notText(file.name) };
  return { ok: true, text };
}

/** Undefined for another encoding, and for what only looks like a file, as a folder that was dropped does. */
async function utf8Of(file: Pick<File, 'arrayBuffer'>): Promise<string | undefined> {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
  } catch {
    return undefined;
  }
}
