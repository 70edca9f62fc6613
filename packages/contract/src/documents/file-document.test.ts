import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { documentIdSchema } from './document-schemas.ts';
import { fileDocument } from './file-document.ts';

describe('fileDocument', () => {
  test.each([
    ['./two-shift.filler.yaml', { kind: 'filler', id: 'two-shift' }],
    ['C:\\files\\two-shift.filler.yaml', { kind: 'filler', id: 'two-shift' }],
    ['../shells/House-0.shell.yaml', { kind: 'shell', id: 'house-0' }],
  ])('golden: %s', (path, document) => {
    expect(fileDocument(path)).toEqual(document);
  });
  test('golden: what is known of its content counts where the ending does not say it', () => {
    expect(fileDocument('ours.yaml', 'filler')).toEqual({ kind: 'filler', id: 'ours' });
    expect(fileDocument('ours.yml', 'shell')).toEqual({ kind: 'shell', id: 'ours' });
  });
  // FNV-1a of nothing is its offset, 811c9dc5: draft-eastlake-fnv, from memory.
  test('golden: marks behind a name that is no id', () => {
    expect(fileDocument('.filler.yaml')?.id).toBe('811c9dc5');
    expect(fileDocument('_.filler.yaml')?.id).toMatch(/^[0-9a-f]{8}$/);
  });
  test('refuses: a file that is neither', () => {
    for (const path of ['a.brief.yaml', 'filler.yaml', 'a.filler.yaml.txt', '', 'a.filler.yaml/'])
      expect(fileDocument(path)).toBeUndefined();
  });
  test('property: any name gives an id that may be one, the same again when the id is the name', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 120 }), (name) => {
        const found = fileDocument(`${name}.filler.yaml`);
        expect(documentIdSchema.safeParse(found?.id).success).toBe(true);
        expect(fileDocument(`./${found?.id ?? ''}.filler.yaml`)).toEqual(found);
      }),
      { seed: 1, numRuns: 2000 },
    );
  });
  test('property: names that differ in more than capital letters are kept apart', () => {
    const sign = fc.constantFrom('a', 'b', '1', '-', '_', ' ', '+', 'ü', 'ж');
    const name = fc.array(sign, { minLength: 1, maxLength: 6 }).map((signs) => signs.join(''));
    fc.assert(
      fc.property(name, name, (one, other) => {
        const [a, b] = [one, other].map((each) => fileDocument(`${each}.shell.yaml`)?.id);
        expect(a === b).toBe(one === other);
      }),
      { seed: 1, numRuns: 5000 },
    );
  });
});
