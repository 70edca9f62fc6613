import { posix } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fileBeside } from './file-beside.ts';

describe('fileBeside', () => {
  test.each([
    ['a.yaml', 'b.yaml', 'b.yaml'],
    ['briefs/a.yaml', '../fillers/b.yaml', 'fillers/b.yaml'],
    ['a.yaml', '../b.yaml', '../b.yaml'],
    ['C:\\briefs\\a.yaml', 'b.yaml', 'C:\\briefs\\b.yaml'],
  ])('golden: %s names %s: %s', (path, name, expected) => {
    expect(fileBeside(path, name)).toBe(expected);
  });
  test('property: what the path module of Node makes of it', () => {
    const path = fc
      .array(fc.constantFrom('a', '/', '..', '.', 'b.c'), { maxLength: 12 })
      .map((steps) => steps.join(''));
    fc.assert(
      fc.property(path, path, (folder, name) => {
        expect(fileBeside(`${folder}/x`, `${name}/y`)).toBe(posix.join(folder || '/', name, 'y'));
      }),
      { seed: 1, numRuns: 2000 },
    );
  });
});
