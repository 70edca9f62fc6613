import { describe, expect, test } from 'vitest';
import { markOf, numberText, withNumber, writtenOf, writtenQuantity } from './written-quantity.ts';

const CUP = { mean: 0.54, sd: 0.01, n: 3, method: 'cup in the bowl', date: '2026-03-02' };

// Written forms by docs/formats.md, "Numbers".
describe('markOf', () => {
  test.each([
    [undefined, 'guess'],
    ['guess', 'guess'],
    [0.54, 'measured'],
    [CUP, 'measured'],
    [{ mean: 1, sd: 0.1, from: 'trial 3' }, 'calibrated'],
  ] as const)('golden: %o rests on %s', (value, mark) => {
    expect(markOf(value)).toBe(mark);
  });
});

describe('numberText', () => {
  test('golden: as the file writes it, when that is the same number', () => {
    expect(numberText(0.5, '0.50')).toBe('0.50');
    expect(numberText(0.6, '0.50')).toBe('0.6');
    expect(numberText(CUP)).toBe('0.54');
    expect(numberText({ mean: '0,5x' })).toBe('0,5x');
  });
  test.each([undefined, 'guess'])('limit: %o is an empty field', (value) => {
    expect(numberText(value)).toBe('');
  });
});

describe('withNumber', () => {
  test('golden: the mean of repeated values, or one value', () => {
    expect(withNumber(CUP, 0.55)).toEqual({ ...CUP, mean: 0.55 });
    expect(withNumber(0.5, 0.55)).toBe(0.55);
    expect(withNumber('guess', 0.55)).toBe(0.55);
  });
  test('limit: what was learned from weights is not any more', () => {
    expect(withNumber({ mean: 1, sd: 0.1, from: 'trial 3' }, 1.1)).toBe(1.1);
  });
});

describe('writtenOf', () => {
  test('golden: quantities of the engine as a brief writes them', () => {
    expect(writtenOf({ basis: 'measured', ...CUP })).toEqual(CUP);
    expect(writtenOf({ basis: 'measured', mean: 0.5, sd: 0.01, n: 1, sdAssumed: true })).toBe(0.5);
    expect(writtenOf({ basis: 'guess', mean: 1, sd: 0.15, halvedBy: 'two-pin-depths' })).toBeUndefined();
    expect(writtenOf({ basis: 'calibrated', mean: 1, sd: 0.1, from: 'trial 3' })).toEqual({
      ...{ mean: 1, sd: 0.1, from: 'trial 3' },
    });
  });
});

describe('writtenQuantity', () => {
  test.each([null, true, [1], undefined])('limit: %o is nothing a number field can show', (raw) => {
    expect(writtenQuantity(raw)).toBeUndefined();
  });
  test('golden: a text in place of a number stays', () => {
    expect(writtenQuantity({ mean: '0,54', sd: 0.01, colour: 'red' })).toEqual({ mean: '0,54', sd: 0.01 });
  });
});
