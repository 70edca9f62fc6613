import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { comparedLines } from './compared-lines.ts';

const marks = (left: string, right: string): string =>
  comparedLines(left, right)
    .map(({ left: l, right: r, isSame }) => (isSame ? '=' : l === undefined ? '>' : r === undefined ? '<' : '~'))
    .join('');

// Longest common subsequence by hand; ABCBDAB and BDCABA is the textbook pair: length 4 (Cormen et al., from memory).
describe('comparedLines', () => {
  test.each([
    ['a\nb\nc', 'a\nb\nc', '==='],
    ['a\nb\nc', 'a\nx\nc', '=~='],
    ['a\nb\nc', 'a\nx\ny\nc', '=~>='],
    ['a\nb\nb\nc', 'a\nx\nc', '=~<='],
    ['a', 'a\nb', '=>'],
    ['a\nb', 'b', '<='],
  ])('golden: %j and %j: %s', (left, right, expected) => {
    expect(marks(left, right)).toBe(expected);
  });
  test('golden: four lines in common', () => {
    const both = marks('A\nB\nC\nB\nD\nA\nB', 'B\nD\nC\nA\nB\nA');
    expect(both.replace(/[<>~]/g, '')).toHaveLength(4);
  });
  test('property: both texts can be read off the rows', () => {
    const text = fc.array(fc.constantFrom('a', 'b', '', 'c: 1'), { minLength: 1 }).map((lines) => lines.join('\n'));
    fc.assert(
      fc.property(text, text, (left, right) => {
        const rows = comparedLines(left, right);
        expect(rows.flatMap((row) => row.left ?? []).join('\n')).toBe(left);
        expect(rows.flatMap((row) => row.right ?? []).join('\n')).toBe(right);
      }),
      { seed: 1 },
    );
  });
});
