import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';

/**
 * The text of a file that a person chose or dropped.
 *
 * @param file - name and text
 * @returns the text without a byte order mark, or why it is not taken, as one sentence
 */
export async function readBriefFile(
  file: Pick<File, 'name' | 'size' | 'text'>,
): Promise<{ readonly ok: true; readonly text: string } | { readonly ok: false; readonly sentence: string }> {
  const { LONGEST_TEXT } = await import('@fillwright/contract/documents');
  if (file.size > LONGEST_TEXT)
    return { ok: false, sentence: BRIEF_PAGE_WORDS.tooLong(file.name, String(LONGEST_TEXT)) };
  const text = (await file.text()).replace(/^\ufeff/, '');
  if (text.trim() === '' || /[\u0000-\u0008\ufffd]/.test(text))
    return { ok: false, sentence: BRIEF_PAGE_WORDS.notText(file.name) };
  return { ok: true, text };
}
