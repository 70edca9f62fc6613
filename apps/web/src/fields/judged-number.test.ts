import { describe, expect, test } from 'vitest';
import { judgedNumber } from './judged-number.ts';

const MG = { unit: 'mg', range: { above: 0, max: 3000 } };

describe('judgedNumber', () => {
  test('golden: in range there is nothing to say', () => {
    expect(judgedNumber('12,5 mg', MG)).toEqual({ typed: { kind: 'number', value: 12.5 }, sentence: undefined });
  });
  test.each([
    ['-5', MG, '-5 is out of range; allowed: above 0, at most 3000 mg.'],
    ['3001', MG, '3001 is out of range; allowed: above 0, at most 3000 mg.'],
    ['1,200', MG, '“1,200” could be 1200 or 1.2000; type one of these two.'],
    ['12 g', MG, '“12 g” is in another unit; convert it to mg, nothing is converted here.'],
    ['2.5', { unit: '1', range: { min: 1 }, isWhole: true }, '2.5 is not a whole number; this field counts.'],
    [
      '3 x',
      { unit: '1', range: {} },
      '“3 x” has something after the number; this field takes a number without a unit.',
    ],
  ])('refuses: %j in words', (text, kind, sentence) => {
    expect(judgedNumber(text, kind).sentence).toBe(sentence);
  });
  test('limit: a number out of range is kept as it was typed', () => {
    expect(judgedNumber('-5', MG).typed).toEqual({ kind: 'number', value: -5 });
  });
});
