import { describe, expect, test } from 'vitest';
import { olderFiles } from './older-files.ts';

const file = { kind: 'filler', id: 'own', file: 'own.filler.yaml', text: '' } as const;
const { text: _text, ...rested } = file;

// Expected by hand.
describe('olderFiles', () => {
  test('golden: a design on version 1 of a file that is at version 3', () => {
    expect(olderFiles([{ ...rested, version: 1 }], [{ ...file, version: 3 }])).toMatchObject([
      { older: 1, version: 3 },
    ]);
  });
  test('golden: a design on the example, of which there is a version now', () => {
    expect(olderFiles([rested], [{ ...file, version: 1 }])).toMatchObject([{ older: undefined, version: 1 }]);
  });
  test('limit: nothing to say of the same version, of the example, and of a design that names no files', () => {
    expect(olderFiles([{ ...rested, version: 2 }], [{ ...file, version: 2 }])).toEqual([]);
    expect(olderFiles([rested], [file])).toEqual([]);
    expect(olderFiles([], [{ ...file, version: 2 }])).toEqual([]);
  });
});
