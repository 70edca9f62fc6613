import { describe, expect, test } from 'vitest';
import { operatingCharacteristic } from '#decisions';

describe('operatingCharacteristic', () => {
  test('golden: mean 100 at sd 5 to 9, mean 96 at sd 5 to 7', () => {
    // 2e7 simulated batches in another program, standard errors at most 1.1e-4.
    const found = operatingCharacteristic({ means: [100, 96], sds: [5, 6, 7, 8, 9] });
    const expected = [0.9998, 0.956, 0.972, 0.686, 0.74, 0.351, 0.375, NaN, 0.147, NaN];
    expected.forEach((p, i) => {
      if (!Number.isNaN(p)) expect(Math.abs(found[i]! - p)).toBeLessThan(0.00094);
    });
  });
  test('property: more spread never passes more often; farther from the zone never either', () => {
    const means = Array.from({ length: 33 }, (_, i) => 98.5 - 0.5 * i);
    const sds = Array.from({ length: 24 }, (_, i) => 0.5 * i);
    const found = operatingCharacteristic({ means, sds, target: 102.5 });
    for (let row = 0; row < sds.length; row++)
      for (let column = 0; column < 24; column++) {
        const at = (r: number, c: number): number => found[r * means.length + c]!;
        if (row > 0) expect(at(row, column)).toBeLessThanOrEqual(at(row - 1, column) + 2e-6);
        if (column > 0) expect(at(row, column)).toBeLessThanOrEqual(at(row, column - 1) + 2e-6);
      }
  });
  test('limit: an empty grid has no values', () => {
    expect(operatingCharacteristic({ means: [], sds: [1] })).toHaveLength(0);
  });
  test.each([
    [{ means: [NaN], sds: [1] }, 'not-finite: mean'],
    [{ means: [100], sds: [-1] }, 'out-of-range: sd'],
    [{ means: [100], sds: [1], target: NaN }, 'not-finite: target'],
  ])('refuses: %o -> %s', (grid, message) => {
    expect(() => operatingCharacteristic(grid)).toThrow(message);
  });
});
