import { describe, expect, test } from 'vitest';
import type { SaveState } from '../state/index.ts';
import { saveSentence } from './save-sentence.ts';

const why = 'The document is too large: Shorten it.';
const UNSENT: readonly SaveState[] = [
  { kind: 'offline', version: 3 },
  { kind: 'trouble', version: 3, why },
  { kind: 'refused', version: 3, why },
];

describe('saveSentence', () => {
  test.each(UNSENT)('property: $kind says where it is kept, and never that it is where it is not', (save) => {
    expect(saveSentence(save, { thing: 'brief', isKeptHere: true })).toContain('kept in this browser');
    const nowhere = saveSentence(save, { thing: 'brief', isKeptHere: false });
    expect(nowhere).toMatch(/this browser keeps nothing/i);
    expect(nowhere).not.toContain('kept in this browser');
  });
  test.each(UNSENT.slice(1))('property: $kind passes on what the server says', (save) => {
    for (const isKeptHere of [true, false]) expect(saveSentence(save, { thing: 'design', isKeptHere })).toContain(why);
  });
  test('limit: what is not kept yet by anyone is not called kept in a moment', () => {
    expect(saveSentence({ kind: 'pending', version: 3 }, { thing: 'brief', isKeptHere: false })).toBe(
      'This browser keeps nothing: stay on this page until the brief is kept',
    );
  });
});
