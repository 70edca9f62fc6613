import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sortFile, type AskedFile } from './sort-file.ts';

const textOf = (name: string): string => readFileSync(new URL(`../../../../examples/${name}`, import.meta.url), 'utf8');
const FILLER = textOf('two-shift.filler.yaml');
const BRIEF = textOf('hazel-25.brief.yaml');
const SHELL = "format: 1\nsize: '0'\nsource: ours\nbodyVolume_mm3: 680\n";
const ASKED: AskedFile = { document: { kind: 'filler', id: 'works-2' }, file: '../fillers/Works-2.filler.yaml' };

describe('sortFile', () => {
  test('golden: a brief, a filler, a shell, each under the name by which a brief finds it', async () => {
    expect(await sortFile({ name: 'a.brief.yaml', text: BRIEF })).toEqual({ is: 'brief' });
    expect(await sortFile({ name: 'Works-2.filler.yaml', text: FILLER })).toEqual({
      ...{ is: 'file', document: { kind: 'filler', id: 'works-2' }, called: 'Works-2.filler.yaml' },
    });
    expect(await sortFile({ name: 'house.yaml', text: SHELL })).toEqual({
      ...{ is: 'file', document: { kind: 'shell', id: 'house' }, called: 'house.shell.yaml' },
    });
  });
  test('golden: a file that a brief asks for takes the name that the brief gives it', async () => {
    expect(await sortFile({ name: 'Works-2.filler (1).yaml', text: FILLER }, ASKED)).toEqual({
      ...{ is: 'file', document: ASKED.document, called: 'Works-2.filler.yaml' },
    });
  });
  test.each([
    [
      'a brief where a filler is asked',
      { name: 'a.brief.yaml', text: BRIEF },
      ASKED,
      /a\.brief\.yaml is a brief.*a filler/,
    ],
    ['a shell where a filler is asked', { name: 'a.shell.yaml', text: SHELL }, ASKED, /a shell.*Works-2\.filler\.yaml/],
    [
      'a file of somebody else',
      { name: 'a.yaml', text: 'on: push\njobs: {}\n' },
      undefined,
      /a\.yaml.*\*\.brief\.yaml/,
    ],
    ['a brief called a filler', { name: 'a.filler.yaml', text: BRIEF }, undefined, /ends like a filler.*holds a brief/],
  ])('refuses: %s, in one sentence that says what it is and what is expected', async (...[, opened, asked, said]) => {
    expect(await sortFile(opened, asked)).toEqual({
      ...{ is: 'refused', sentence: expect.stringMatching(said) as string },
    });
  });
});
