import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blocksByWords } from './blocks-by-words.ts';
import { effectBits } from './effect-bits.ts';
import { effectWord } from './effect-word.ts';
import { fractionalFactorial } from './fractional-factorial.ts';
import { fullFactorial } from './full-factorial.ts';
import { twoLevelEffects } from './two-level-effects.ts';

/** 2^4 in standard order, Montgomery's filtration rates (from memory). */
const FILTRATION = [45, 71, 48, 65, 68, 60, 80, 65, 43, 100, 45, 104, 75, 86, 70, 96];

describe('fullFactorial', () => {
  test('golden: standard order of 2^3, by hand', () => {
    const signs = fullFactorial({ factorCount: 3 }).map((row) => row.map((level) => (level > 0 ? '+' : '-')).join(''));
    expect(signs).toEqual(['---', '+--', '-+-', '++-', '--+', '+-+', '-++', '+++']);
  });
  test.each([0, 13, 2.5, NaN])('refuses: %s factors', (factorCount) => {
    expect(() => fullFactorial({ factorCount })).toThrow(/factorCount/);
  });
});

describe('effectWord', () => {
  test('golden: the letter I is left out', () => {
    expect(effectWord(0)).toBe('I');
    expect(effectWord(0b101)).toBe('AC');
    expect(effectWord(1 << 8)).toBe('J');
  });
});

describe('effectBits', () => {
  test('property: undoes effectWord', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 32767 }), (bits) => {
        expect(effectBits(effectWord(bits))).toBe(bits);
      }),
      { seed: 1 },
    );
  });
  test.each(['AA', 'I', 'a', 'A1'])('refuses: %s', (word) => {
    expect(effectBits(word)).toBeUndefined();
  });
});

describe('fractionalFactorial', () => {
  // Defining relations as printed in textbooks: 2^(5-2) III, 2^(6-2) IV, 2^(8-4) IV (from memory).
  test.each([
    [5, ['D=AB', 'E=AC'], ['ABD', 'ACE', 'BCDE'], 3],
    [6, ['E=ABC', 'F=BCD'], ['ABCE', 'ADEF', 'BCDF'], 4],
    [4, ['D=-ABC'], ['-ABCD'], 4],
  ] as const)('golden: %s factors by %j', (...[factorCount, generators, definingRelation, resolution]) => {
    expect(fractionalFactorial({ factorCount, generators })).toMatchObject({ definingRelation, resolution });
  });
  test('golden: aliases of 2^(4-1): A = BCD, AB = CD; with the other half they change sign', () => {
    const half = fractionalFactorial({ factorCount: 4, generators: ['D=ABC'] }).aliases;
    expect(half.find(({ effect }) => effect === 'A')?.aliases).toEqual(['BCD']);
    expect(half.find(({ effect }) => effect === 'AB')?.aliases).toEqual(['CD']);
    const other = fractionalFactorial({ factorCount: 4, generators: ['D=-ABC'] }).aliases;
    expect(other.find(({ effect }) => effect === 'AB')?.aliases).toEqual(['-CD']);
  });
  test('property: columns of aliased effects are equal up to their sign', () => {
    const { rows, aliases } = fractionalFactorial({ factorCount: 7, generators: ['E=ABC', 'F=-BCD', 'G=ACD'] });
    const column = (word: string): number[] =>
      rows.map((row) => Array.from(word).reduce((sign, letter) => sign * row['ABCDEFG'.indexOf(letter)]!, 1));
    for (const { effect, aliases: names } of aliases)
      for (const name of names) {
        const sign = name.startsWith('-') ? -1 : 1;
        expect(column(name.replace('-', '')).map((value) => sign * value)).toEqual(column(effect));
      }
  });
  test('limit: no generator gives the full factorial, without a resolution', () => {
    const full = fractionalFactorial({ factorCount: 3, generators: [] });
    expect(full.rows).toEqual(fullFactorial({ factorCount: 3 }));
    expect(full.resolution).toBeUndefined();
  });
  test.each([['D=AD'], ['C=AB'], ['D=ABI'], ['D=AA'], ['D'], ['D=abc'], ['D=E']])('refuses: %s', (generator) => {
    expect(() => fractionalFactorial({ factorCount: 4, generators: [generator] })).toThrow(/generatorIndex=0/);
  });
});

describe('blocksByWords', () => {
  test('golden: 2^3 in two blocks by ABC, by hand: (1), ab, ac, bc belong together', () => {
    const rows = fullFactorial({ factorCount: 3 });
    expect(blocksByWords({ rows, words: ['ABC'] })).toEqual([1, 2, 2, 1, 2, 1, 1, 2]);
    expect(new Set(blocksByWords({ rows, words: ['AB', 'AC'] }))).toEqual(new Set([1, 2, 3, 4]));
  });
  test('refuses: a factor that is not there, a level between', () => {
    const rows = fullFactorial({ factorCount: 2 });
    expect(() => blocksByWords({ rows, words: ['AC'] })).toThrow(/word=0/);
    expect(() => blocksByWords({ rows: [[0, 1]], words: ['AB'] })).toThrow(/run=0/);
  });
});

describe('twoLevelEffects', () => {
  // Montgomery: A 21.625, AC -18.125, AD 16.625; Lenth's PSE 2.625, ME 6.75, SME 13.70 as printed (from memory).
  test('golden: filtration rates: A, C, D, AC, AD stand out alone and together', () => {
    const found = twoLevelEffects({ responses: FILTRATION });
    expect(found.effects.find(({ name }) => name === 'AC')?.effect).toBe(-18.125);
    expect(found.pseudoStandardError).toBe(2.625);
    expect(found.marginOfError).toBeCloseTo(6.75, 2);
    expect(found.simultaneousMargin).toBeCloseTo(13.7, 2);
    const beyond = found.effects.filter(({ isBeyondMargin }) => isBeyondMargin).map(({ name }) => name);
    expect(beyond).toEqual(['A', 'C', 'D', 'AC', 'AD']);
  });
  test('property: sums of squares add up to the total; a constant shift moves the mean alone', () => {
    const responses = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(responses, (y) => {
        const { mean, effects } = twoLevelEffects({ responses: Object.freeze(y) });
        const total = y.reduce((sum, value) => sum + (value - mean) ** 2, 0);
        expect(effects.reduce((sum, { sumOfSquares }) => sum + sumOfSquares, 0)).toBeCloseTo(total, 6);
        const moved = twoLevelEffects({ responses: y.map((value) => value + 5) });
        expect(moved.effects.map(({ effect }) => effect)).toEqual(effects.map(({ effect }) => effect));
      }),
      { seed: 2 },
    );
  });
  test('limit: equal responses have no effect, and none stands out', () => {
    const { effects, pseudoStandardError } = twoLevelEffects({ responses: [3, 3, 3, 3] });
    expect(pseudoStandardError).toBe(0);
    expect(effects.some(({ isBeyondMargin }) => isBeyondMargin)).toBe(false);
  });
  test.each([[[]], [[1]], [[1, 2, 3]], [[1, 2, 3, NaN]]])('refuses: %j', (responses) => {
    expect(() => twoLevelEffects({ responses })).toThrow(/sample-size|not-finite/);
  });
});
