import { describe, expect, test } from 'vitest';
import { accurateDot } from './accurate-dot.ts';

describe('accurateDot', () => {
  test.each([
    // By hand: 1e16 + 1 - 1e16 = 1; (1 + 2^-30)^2 - 1 - 2^-29 = 2^-60.
    ['a small term between large ones', [1e16, 1, -1e16], [1, 1, 1], [], 1],
    ['the low half of a product', [1 + 2 ** -30, -1, -(2 ** -29)], [1 + 2 ** -30, 1, 1], [], 2 ** -60],
    ['terms added', [2, 3], [5, 7], [-31, 2 ** -60], 2 ** -60],
    ['nothing', [], [], [], 0],
  ])('golden: %s', (...[, left, right, plus, expected]) => {
    expect(accurateDot({ left, right, plus })).toBe(expected);
  });
});
