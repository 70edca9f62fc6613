import { describe, expect, test } from 'vitest';
import { steppedNumber } from './stepped-number.ts';

// Sums by hand.
describe('steppedNumber', () => {
  test.each([
    [0.2, { step: 0.1, count: 1 }, 0.3],
    [21.5, { step: 0.1, count: 10 }, 22.5],
    [0.54, { step: 0.01, count: -1 }, 0.53],
    [0.545, { step: 0.01, count: 1 }, 0.555],
    [430, { step: 5, count: -10 }, 380],
    [0, { step: 1, count: -1 }, -1],
    [2.5e-7, { step: 1e-7, count: 1 }, 3.5e-7],
  ])('golden: %s by %o is %s', (value, by, expected) => {
    expect(steppedNumber(value, by)).toBe(expected);
  });
});
