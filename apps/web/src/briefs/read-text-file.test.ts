import { describe, expect, test } from 'vitest';
import { readTextFile } from './read-text-file.ts';

const fileOf = (content: string | Uint8Array<ArrayBuffer>): File => new File([content], 'a.brief.yaml');

describe('readTextFile', () => {
  test('golden: the text as it is, without a byte order mark', async () => {
    expect(await readTextFile(fileOf('\ufeffformat: 1\r\n'))).toEqual({ ok: true, text: 'format: 1\r\n' });
  });
  test.each([
    ['an empty file', ''],
    ['a picture', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1])],
    ['another encoding', new Uint8Array([0x61, 0x3a, 0xe9, 0xff])],
    ['a huge file', 'a'.repeat(262_145)],
  ])('refuses: %s in one sentence', async (_, content) => {
    const read = await readTextFile(fileOf(content));
    expect(read).toMatchObject({ ok: false, sentence: expect.stringContaining('a.brief.yaml') as string });
  });
});
