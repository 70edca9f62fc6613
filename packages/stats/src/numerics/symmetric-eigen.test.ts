import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { symmetricEigen } from './symmetric-eigen.ts';

describe('symmetricEigen', () => {
  // Second difference matrix of order n: 2 - 2 cos(k pi / (n + 1)), k = 1..n.
  test('golden: second differences of order 9', () => {
    const rows = Array.from({ length: 9 }, (_, i) =>
      Array.from({ length: 9 }, (_column, j) => (i === j ? 2 : Math.abs(i - j) === 1 ? -1 : 0)),
    );
    const { values } = symmetricEigen(rows);
    for (const [k, value] of values.entries())
      expect(Math.abs(value - (2 - 2 * Math.cos(((k + 1) * Math.PI) / 10)))).toBeLessThan(1e-14);
  });
  test('golden: by hand, [[2, 1], [1, 2]] has 1 and 3', () => {
    const { values, vectors } = symmetricEigen([
      [2, 1],
      [1, 2],
    ]);
    expect(values[0]).toBeCloseTo(1, 15);
    expect(values[1]).toBeCloseTo(3, 15);
    expect(vectors[1]![0]).toBeCloseTo(Math.SQRT1_2, 15);
    expect(vectors[1]![1]).toBeCloseTo(Math.SQRT1_2, 15);
  });
  test('property: A v = lambda v, vectors at right angles, sum of eigenvalues is the trace', () => {
    const size = fc.integer({ min: 1, max: 7 });
    const matrix = size.chain((n) =>
      fc.array(fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: n, maxLength: n }), {
        minLength: n,
        maxLength: n,
      }),
    );
    fc.assert(
      fc.property(matrix, (raw) => {
        const rows = raw.map((row, i) => row.map((value, j) => value + raw[j]![i]!));
        const { values, vectors } = symmetricEigen(rows);
        for (const [k, vector] of vectors.entries()) {
          for (const [i, row] of rows.entries())
            expect(Math.abs(dot(row, vector) - values[k]! * vector[i]!)).toBeLessThan(1e-12);
          for (const [l, other] of vectors.entries())
            expect(Math.abs(dot(vector, other) - (k === l ? 1 : 0))).toBeLessThan(1e-13);
        }
        expect(values.reduce((a, b) => a + b, 0)).toBeCloseTo(
          rows.reduce((sum, row, i) => sum + row[i]!, 0),
          10,
        );
        expect(values).toEqual(values.toSorted((a, b) => a - b));
      }),
      { seed: 7 },
    );
  });
  test('refuses: what is not square, not symmetric or not finite', () => {
    expect(() => symmetricEigen([[1, 2]])).toThrow('wrong-length');
    expect(() =>
      symmetricEigen([
        [1, 2],
        [2.1, 1],
      ]),
    ).toThrow('not-symmetric');
    expect(() => symmetricEigen([[NaN]])).toThrow('not-finite');
    expect(() => symmetricEigen([])).toThrow('sample-size');
  });
});

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0);
}
