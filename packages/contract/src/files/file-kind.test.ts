import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fileKind } from './file-kind.ts';

const FOLDER = new URL('../../../../examples/', import.meta.url);
const textOf = (name: string): string => readFileSync(new URL(name, FOLDER), 'utf8');
const SHELL = "format: 1\nsize: '0'\nsource: ours\nbodyVolume_mm3: 680\n";

describe('fileKind', () => {
  test.each(readdirSync(FOLDER).filter((name) => name.endsWith('.yaml')))(
    'golden: %s is what its name says, also under a name that says nothing',
    (name) => {
      const kind = name.includes('.brief.') ? 'brief' : 'filler';
      expect(fileKind(name, textOf(name))).toEqual({ is: kind });
      expect(fileKind('copy (1).yaml', textOf(name))).toEqual({ is: kind });
    },
  );
  test('golden: a shell', () => {
    expect(fileKind('house.yaml', SHELL)).toEqual({ is: 'shell' });
  });
  test.each(['carriers: [', '', 'format: 1', 'nothing: of ours'])(
    'golden: the ending says what it is to be where the text does not: %j',
    (text) => {
      expect(fileKind('ours.filler.yaml', text)).toEqual({ is: 'filler' });
      expect(fileKind('ours.yaml', text)).toEqual({ is: 'unknown' });
    },
  );
  test('refuses: a name that says something else than the text', () => {
    expect(fileKind('two-shift.filler.yaml', textOf('alder-200.brief.yaml'))).toEqual({
      ...{ is: 'contradicting', called: 'filler', holds: 'brief' },
    });
  });
  test('property: never throws', () => {
    fc.assert(
      fc.property(fc.string(), fc.string({ unit: 'binary' }), (name, text) => {
        expect(['brief', 'filler', 'shell', 'unknown', 'contradicting']).toContain(fileKind(name, text).is);
      }),
      { seed: 1, numRuns: 500 },
    );
  });
});
