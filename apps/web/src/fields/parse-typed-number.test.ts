import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isWithin } from './number-range.ts';
import { parseTypedNumber } from './parse-typed-number.ts';

const number = (value: number): object => ({ kind: 'number', value });
const refused = (refusal: string): object => expect.objectContaining({ kind: 'refused', refusal }) as object;

// Readings by hand: SI brochure, 9th edition (2019), 5.4.4: the decimal marker is a point or a comma, thousands are
// parted by neither; ISO 80000-1 says the same (from memory).
describe('parseTypedNumber', () => {
  test.each([
    ['12,5', 12.5],
    ['12.5', 12.5],
    [' 12,5 ', 12.5],
    ['\t12,5\r\n', 12.5],
    ['"12,5"', 12.5],
    ["'12,5", 12.5],
    ['\u200e12.5\u00a0', 12.5],
    ['-5', -5],
    ['\u22125', -5],
    ['\u22120,5', -0.5],
    ['+5', 5],
    ['.5', 0.5],
    [',5', 0.5],
    ['5.', 5],
    ['007', 7],
    ['0,123', 0.123],
    ['1234,567', 1234.567],
    ['1.2345', 1.2345],
    ['1234', 1234],
    ['1e3', 1000],
    ['1,5e-3', 0.0015],
    ['1.234e3', 1234],
  ])('golden: %j is %s', (text, value) => {
    expect(parseTypedNumber(text)).toEqual(number(value));
  });
  test.each([
    ['12,5 mg', 'mg', 12.5],
    ['12,5mg', 'mg', 12.5],
    ['12.5\u202fmg', 'mg', 12.5],
    ['0,54 g/cm³', 'g/mL', 0.54],
    ['1e3 mg', 'mg', 1000],
    ['5 %', '%', 5],
    ['1.6 1/MPa', '1/MPa', 1.6],
    ['43 µL', 'mm3', 43],
  ])('golden: %j into a field in %s is %s', (text, unit, value) => {
    expect(parseTypedNumber(text, { unit })).toEqual(number(value));
  });
  test.each(['', '   ', '\u00a0', '""'])('limit: %j is empty', (text) => {
    expect(parseTypedNumber(text)).toEqual({ kind: 'empty' });
  });
  test.each([
    ['1.234,5', 'thousands-mark'],
    ['1,234.5', 'thousands-mark'],
    ['1 234', 'thousands-mark'],
    ['1\u202f234', 'thousands-mark'],
    ["1'234", 'thousands-mark'],
    ['1’234,5', 'thousands-mark'],
    ['1_234', 'thousands-mark'],
    ['1,00,000', 'thousands-mark'],
    ['1,234,567', 'thousands-mark'],
    ['12..5', 'thousands-mark'],
    ['1,234', 'ambiguous'],
    ['1.234', 'ambiguous'],
    ['-123.456', 'ambiguous'],
    ['12 13', 'several-numbers'],
    ['12\n13', 'several-numbers'],
    ['5-6', 'several-numbers'],
    ['0.54 ± 0.01', 'several-numbers'],
    ['1/3', 'several-numbers'],
    ['0x10', 'other-unit'],
    ['１２', 'foreign-digits'],
    ['1２', 'foreign-digits'],
    ['١٢', 'foreign-digits'],
    ['1e999', 'too-large'],
    ['-1e999', 'too-large'],
    ['abc', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['Infinity', 'not-a-number'],
    ['~5', 'not-a-number'],
    ['<5', 'not-a-number'],
    ['--5', 'not-a-number'],
    ['(12.5)', 'not-a-number'],
    ['=12.5', 'not-a-number'],
    [',', 'not-a-number'],
    ['-', 'not-a-number'],
    ['12,5 mg', 'other-unit'],
    ['5 approx', 'other-unit'],
    ['1e', 'other-unit'],
  ])('refuses: %j as %s', (text, refusal) => {
    expect(parseTypedNumber(text)).toEqual(refused(refusal));
  });
  test.each([
    ['12,5 g', 'mg', 'g'],
    ['12,5 Mg', 'mg', 'Mg'],
    ['500 kg/m3', 'g/mL', 'kg/m3'],
  ])('refuses: %j into a field in %s', (text, unit, rest) => {
    expect(parseTypedNumber(text, { unit })).toEqual({ kind: 'refused', refusal: 'other-unit', rest });
  });
  test('golden: the range settles what a mark before three digits can be', () => {
    expect(parseTypedNumber('1,512', { range: { min: 0.3, max: 5 } })).toEqual(number(1.512));
    expect(parseTypedNumber('1.512', { range: { min: 0.3, max: 5 } })).toEqual(number(1.512));
    expect(parseTypedNumber('1.200', { range: { above: 0, max: 3000 } })).toEqual(refused('ambiguous'));
    expect(parseTypedNumber('1,200', { range: { min: 10, max: 5000 } })).toEqual(refused('ambiguous'));
    expect(parseTypedNumber('9,999', { range: { min: 0.3, max: 5 } })).toEqual(refused('ambiguous'));
  });
  test('limit: nothing is clamped to the range', () => {
    expect(parseTypedNumber('600', { range: { max: 500 } })).toEqual(number(600));
    expect(parseTypedNumber('-5', { range: { min: 0 } })).toEqual(number(-5));
  });
  test('property: a printed number reads back the same, with point and with comma, unless a mark could part thousands', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        for (const text of [String(value), String(value).replace('.', ',')]) {
          const typed = parseTypedNumber(text);
          if (typed.kind === 'number') expect(typed.value).toBe(value + 0);
          else expect(text).toMatch(/^-?[1-9]\d{0,2}[.,]\d{3}$/);
        }
      }),
      { seed: 1, numRuns: 2000 },
    );
  });
  test('property: no text gives NaN or infinity', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...Array.from('0123456789.,-+eE \u2212"mg')) }), (text) => {
        const typed = parseTypedNumber(text, { unit: 'mg' });
        expect(typed.kind !== 'number' || Number.isFinite(typed.value)).toBe(true);
      }),
      { seed: 1, numRuns: 2000 },
    );
  });
});

describe('isWithin', () => {
  test('limit: NaN lies in no range, not even in one without ends', () => {
    expect(isWithin(NaN, {})).toBe(false);
  });
  test.each([
    [0, { min: 0 }, true],
    [0, { above: 0 }, false],
    [5, { max: 5 }, true],
    [5, { below: 5 }, false],
  ])('limit: %s in %o: %s', (value, range, is) => {
    expect(isWithin(value, range)).toBe(is);
  });
});
