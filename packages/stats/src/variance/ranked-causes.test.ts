import { describe, expect, test } from 'vitest';
import { rankedCauses } from './ranked-causes.ts';

describe('rankedCauses', () => {
  // 6 groups x 12 columns; a pin of column 4 stuck: -64.7 in its six cells; a ripple stands for chance.
  const cells = Array.from({ length: 72 }, (_, i) => ({ column: (i % 12) + 1, ripple: ((i * 37) % 11) - 5 }));
  const stuck = (column: number): number[] => cells.map((cell) => (cell.column === column ? -64.7 : 0));
  test('a stuck pin is found in its column, others explain less than nothing', () => {
    const values = cells.map(({ column, ripple }) => 400 + ripple + (column === 4 ? -64.7 : 0));
    const found = rankedCauses({ values, causes: [stuck(3), stuck(4), stuck(5)] });
    expect(found.causes[0]?.cause).toBe(1);
    expect(found.causes[0]?.explained).toBeGreaterThan(0.9);
    expect(found.causes[1]?.explained).toBeLessThan(0);
    expect(found.withoutCause).toBeGreaterThan(6 * (11 / 12) * 64.7 ** 2 * 0.9);
  });
  // By hand: 1, 3 about 2: 2; less 2 at the second: 0.
  test('golden: two values', () => {
    const causes = [{ cause: 0, residualSumOfSquares: 0, explained: 1 }];
    expect(rankedCauses({ values: [1, 3], causes: [[0, 2]] })).toEqual({ withoutCause: 2, causes });
  });
  test('refuses NaN, other lengths, nothing', () => {
    for (const [values, causes] of [
      ...[
        [[1, NaN], [[0, 0]]],
        [[1, 2], [[0, NaN]]],
        [[1, 2], [[0]]],
      ],
      ...[
        [[1, 2], []],
        [[1], [[0]]],
        [[1, 1], [[0, 0]]],
      ],
    ] as [number[], number[][]][])
      expect(() => rankedCauses({ values, causes })).toThrow();
  });
});
