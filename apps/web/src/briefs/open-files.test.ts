import { describe, expect, test } from 'vitest';
import { openFiles } from './open-files.ts';

const SHELL = "format: 1\nsize: '0'\nsource: ours\nbodyVolume_mm3: 680\n";
const fileOf = (name: string, content: string | Uint8Array<ArrayBuffer>): File => new File([content], name);

// No server answers here: what is to be kept cannot be, and has to say so.
describe('openFiles', () => {
  test('golden: briefs are handed on, whatever stands beside them; one sentence for each of the others', async () => {
    const opened = await openFiles([
      ...[fileOf('a.brief.yaml', 'product: {\n'), fileOf('b.png', new Uint8Array([0x89, 0x50, 0xff]))],
      ...[fileOf('c.yaml', 'x: 1\n'), fileOf('d.brief.yaml', 'format: 1\n')],
    ]);
    expect(opened.briefs).toEqual([
      { name: 'a.brief.yaml', text: 'product: {\n' },
      { name: 'd.brief.yaml', text: 'format: 1\n' },
    ]);
    expect(opened.notes.map(({ sentence, isAttention }) => [sentence.split(' ')[0], isAttention])).toEqual([
      ['b.png', true],
      ['c.yaml', true],
    ]);
  });
  test('refuses: to say that a file is kept when no server answers', async () => {
    const { notes } = await openFiles([fileOf('house.shell.yaml', SHELL)]);
    expect(notes).toEqual([
      {
        sentence: expect.stringMatching(/house\.shell\.yaml was not kept.*open the file again/) as string,
        isAttention: true,
      },
    ]);
  });
  test('refuses: two files that would be one, and two where one is asked', async () => {
    const two = [fileOf('house.shell.yaml', SHELL), fileOf('House.yaml', SHELL)];
    const { notes } = await openFiles(two);
    expect(notes[1]?.sentence).toMatch(/House\.yaml was not kept: another file/);
    const asked = { document: { kind: 'shell', id: 'house' }, file: './house.shell.yaml' } as const;
    expect((await openFiles(two, asked)).notes).toHaveLength(1);
  });
});
