import { describe, expect, test } from 'vitest';
import { newBox } from '../../fixtures/box.ts';
import { KeptTexts } from './kept-texts.ts';

const NAME = { kind: 'brief', id: 'alder' } as const;
const text = (one: string): { text: string; basedOn: number; sent: readonly string[] } => ({
  text: one,
  basedOn: 3,
  sent: ['before'],
});

describe('KeptTexts', () => {
  test('regression: what one tab has acknowledged frees its place and leaves the other text of a closed tab', () => {
    const shared = newBox();
    const [one, two] = [new KeptTexts(shared, 'one'), new KeptTexts(shared, 'two')];
    one.keep(NAME, text('a'));
    two.keep(NAME, text('b'));
    two.forget(NAME, 'b');
    two.free(NAME);
    expect(two.take(NAME)).toMatchObject(text('a'));
  });
  test('golden: a tab takes its own text first; what a closed one left is moved, not copied', () => {
    const shared = newBox();
    const [one, two] = [new KeptTexts(shared, 'one'), new KeptTexts(shared, 'two')];
    one.keep(NAME, text('a'));
    two.keep(NAME, text('b'));
    expect(one.take(NAME)?.text).toBe('a');
    one.free(NAME);
    expect(one.take(NAME)?.text).toBe('b');
    one.free(NAME);
    expect(two.take(NAME)).toBeUndefined();
  });
  test('golden: to look at a text of another tab does not take it away', () => {
    const shared = newBox();
    const [one, two] = [new KeptTexts(shared, 'one'), new KeptTexts(shared, 'two')];
    one.keep(NAME, text('a'));
    expect(two.look(NAME)).toMatchObject(text('a'));
    two.free(NAME);
    expect(one.take(NAME)).toMatchObject(text('a'));
    expect(two.look({ kind: 'brief', id: 'other' })).toBeUndefined();
  });
  test('limit: another document, another kind and a longer id are left alone', () => {
    const texts = new KeptTexts(newBox(), 'one');
    texts.keep({ kind: 'brief', id: 'alder-2' }, text('a'));
    texts.keep({ kind: 'design', id: 'alder' }, text('a'));
    texts.forget(NAME, 'a');
    expect(texts.take(NAME)).toBeUndefined();
    expect(texts.ids('brief')).toEqual(['alder-2']);
  });
  test.each(['', '{', 'null', '7', '{"text":1,"basedOn":2}', '{"text":"a"}'])(
    'refuses: %s in the storage is no text, and no fault',
    (found) => {
      const shared = newBox();
      shared.set('fillwright.kept.brief.alder.other', found);
      expect(new KeptTexts(shared, 'one').take(NAME)).toBeUndefined();
    },
  );
});
