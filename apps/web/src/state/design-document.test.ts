import { designChoiceSchema } from '@fillwright/contract/documents';
import { describe, expect, test } from 'vitest';
import { documentChoice } from './design-document.ts';

const CHOICE = {
  size: '2',
  method: 'disc-stations',
  settings: { parts: { disc: 'W2-125' }, values: { 'pin-1': 3.5 } },
};
const KEPT = { kind: 'filler', id: 'works-2', file: 'works-2.filler.yaml', version: 4, text: 'name: Works' } as const;
const EXAMPLE = { kind: 'shell', id: 'own', file: 'own.shell.yaml', text: 'size: "2"' } as const;

describe('documentChoice', () => {
  test('golden: it says from which versions of which files it was computed, and holds no text of them', () => {
    const read = designChoiceSchema.parse(JSON.parse(documentChoice(CHOICE, { version: 7, files: [KEPT, EXAMPLE] })));
    expect(read).toMatchObject({ briefVersion: 7, ...CHOICE.settings });
    expect(read.files).toEqual([
      { kind: 'filler', id: 'works-2', file: 'works-2.filler.yaml', version: 4 },
      { kind: 'shell', id: 'own', file: 'own.shell.yaml' },
    ]);
  });
  test('golden: a brief that names no file leaves the list out, as designs before it was asked', () => {
    const text = documentChoice(CHOICE, { version: 1, files: [] });
    expect(designChoiceSchema.parse(JSON.parse(text)).files).toBeUndefined();
  });
});
