import { describe, expect, test } from 'vitest';
import { numberText } from './number-text.ts';

// By hand: what a person would write, with narrow blanks.
describe('numberText', () => {
  test.each([
    [{ value: 0.0967, unit: '1', key: 'share_frac' }, '9.67\u202F%'],
    [{ value: 0.999993, unit: '1', key: 'pass_frac' }, 'more than 99.9\u202F%'],
    [{ value: 1, unit: '1', key: 'pass_frac' }, '100\u202F%'],
    [{ value: 1.6, unit: '1/MPa' }, '1.6\u202FMPa\u207B\u00B9'],
    [{ value: 14.893, unit: 'N' }, '14.9\u202FN'],
  ])('golden: %o is written %s', ({ value, ...of }, text) => {
    expect(numberText(value, of)).toBe(text);
  });
  test('limit: nothing is never a number', () => {
    expect(numberText(NaN, { unit: '1', key: 'pass_frac' })).toBe('cannot tell');
    expect(numberText(NaN, { unit: '1/MPa' })).toBe('cannot tell');
  });
});
