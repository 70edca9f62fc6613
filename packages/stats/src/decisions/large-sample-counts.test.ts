import { describe, expect, test } from 'vitest';
import { binomialCdf } from '#distributions';
import { largeSampleCounts } from '#decisions';

describe('largeSampleCounts', () => {
  // Ph. Eur. 2.9.47 as quoted in the reference: both printed thresholds of c2 (secondary).
  test.each([
    [384, 2],
    [385, 3],
    [489, 3],
    [490, 4],
  ])('golden: c2 at n = %s is %s', (n, count) => {
    expect(largeSampleCounts({ n }).greatestOutsideCount).toBe(count);
  });

  test('property: the largest count that is not more likely than not to be kept', () => {
    for (let n = 100; n < 3000; n += 7) {
      const { greatestOutsideCount: k } = largeSampleCounts({ n });
      const p = 1 - Math.pow(0.75, 1 / 30);
      expect(binomialCdf({ k, n, p })).toBeLessThanOrEqual(0.5);
      expect(binomialCdf({ k: k + 1, n, p })).toBeGreaterThan(0.5);
    }
  });

  test('limit: no factor k outside the rows that were seen', () => {
    expect(largeSampleCounts({ n: 384 }).printed).toBeUndefined();
    expect(largeSampleCounts({ n: 594 }).printed).toBeUndefined();
    expect(largeSampleCounts({ n: 406 }).printed).toEqual({ k: 2.23, row: 385 });
    expect(largeSampleCounts({ n: 407 }).printed).toEqual({ k: 2.24, row: 407 });
  });

  test.each([NaN, 99, 100.5])('refuses: n = %s', (n) => {
    expect(() => largeSampleCounts({ n })).toThrow(/n=/);
  });
});
