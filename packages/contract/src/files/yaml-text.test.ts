import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { yamlText } from './yaml-text.ts';

describe('yamlText', () => {
  test.each([
    ['a:\n\tb: 1', 'tab-as-indent', 2],
    ['a: 1\n a: 2', 'block-as-implicit-key', 1],
    ['a: [1, 2\nb: 3', 'bad-indent', 2],
    ['a: "x', 'missing-char', 1],
    ['a: @x', 'bad-scalar-start', 1],
    ['a: 1\n---\nb: 1', 'multiple-docs', 2],
    ['a: !box 1', 'tag-resolve-failed', 1],
    ['a: *b', 'unknown-alias', 1],
    ['', 'empty-text', 1],
    ['# only a comment\n', 'empty-text', 1],
    ['- 1', 'not-a-mapping', 1],
    ['just words', 'not-a-mapping', 1],
    ['0.54', 'not-a-mapping', 1],
  ])('refuses: %j -> %s in line %d', (...[text, rule, line]) => {
    expect(yamlText(text).faults).toMatchObject([{ code: 'syntax', rule, line }]);
  });
  test('refuses: references that grow into millions of values', () => {
    const levels = Array.from({ length: 9 }, (_, i) => `a${i + 1}: &a${i + 1} [${Array(9).fill(`*a${i}`).join(',')}]`);
    const { faults, isReadable } = yamlText(`a0: &a0 [1,1,1,1,1,1,1,1,1]\n${levels.join('\n')}`);
    expect(faults).toMatchObject([{ rule: 'too-many-aliases' }]);
    expect(isReadable).toBe(false);
  });
  test.each(['['.repeat(50_000), '{a: '.repeat(50_000)])('refuses: brackets without end', (text) => {
    expect(yamlText(text).isReadable).toBe(false);
  });
  test('refuses: a text that is far too long', () => {
    expect(yamlText(`a: ${'x'.repeat(600_000)}`).faults).toMatchObject([{ rule: 'text-too-long' }]);
  });
  test('refuses: keys given twice, at every depth', () => {
    const { faults } = yamlText('a:\n  - b: 1\n    b: 2\na: 3\n');
    expect(faults).toMatchObject([
      { code: 'duplicate-key', field: 'a.0.b', line: 3, facts: { firstLine: 2 } },
      { code: 'duplicate-key', field: 'a', line: 4, facts: { firstLine: 1 } },
    ]);
  });
  test('golden: a decimal comma in braces is put back to what was written', () => {
    const text = yamlText('a: { mean: 0,54, sd: 0,01, n: 3 }');
    expect(text.value).toEqual({ a: { mean: '0,54', sd: '0,01', n: 3 } });
    expect(text.textAt?.(['a', 'mean'])).toBe('0,54');
  });
  test('golden: places are of keys and items, the nearest around a field that is not there', () => {
    const { placeOf } = yamlText('a: 1\nb:\n  - c: 2\n    "d.e": 3\n  - f\n');
    expect(placeOf('b.0.c')).toEqual({ line: 3, column: 5 });
    expect(placeOf('b.0.d.e')).toEqual({ line: 4, column: 5 });
    expect(placeOf('b.1')).toEqual({ line: 5, column: 5 });
    expect(placeOf('b.0.missing.more')).toEqual({ line: 3, column: 5 });
    expect(placeOf('zzz')).toEqual({ line: 1, column: 1 });
  });
  test('golden: scalars are told as written', () => {
    const { textAt, value } = yamlText("a: 00\nb: '00'\nc: .nan\nd: &x 1_0\ne: *x\n");
    expect(['a', 'b', 'c', 'd'].map((key) => textAt?.([key]))).toEqual(['00', '00', '.nan', '1_0']);
    expect(textAt?.(['e'])).toBeUndefined();
    expect(value).toEqual({ a: 0, b: '00', c: NaN, d: '1_0', e: '1_0' });
  });
  test('property: never throws, and every place is a place', () => {
    const piece = fc.constantFrom(
      'a',
      ':',
      ' ',
      '\n',
      '-',
      '[',
      ']',
      '{',
      '}',
      ',',
      '"',
      "'",
      '&a',
      '*a',
      '!t',
      '|',
      '>',
      '0',
      '\t',
      '#',
      '? ',
      '<<',
      '%',
      '---\n',
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join('')),
    );
    fc.assert(
      fc.property(text, fc.string(), (written, field) => {
        const { faults, placeOf } = yamlText(written);
        for (const { line, column } of [...faults, placeOf(field)]) {
          expect(line).toBeGreaterThanOrEqual(1);
          expect(column).toBeGreaterThanOrEqual(1);
        }
      }),
      { seed: 1, numRuns: 2000 },
    );
  });
});
