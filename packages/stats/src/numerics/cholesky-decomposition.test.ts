import { describe, expect, test } from 'vitest';
import { choleskyDecomposition } from './cholesky-decomposition.ts';
import { choleskySolve } from './cholesky-solve.ts';

const hilbert = (n: number): number[][] =>
  Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_column, j) => 1 / (i + j + 1)));

describe('choleskyDecomposition', () => {
  test('golden: by hand, whole numbers', () => {
    const rows = [
      [4, 12, -16],
      [12, 37, -43],
      [-16, -43, 98],
    ];
    const found = choleskyDecomposition(rows);
    expect(found.lower).toEqual([
      [2, 0, 0],
      [6, 1, 0],
      [-8, 5, 3],
    ]);
    expect(found.logDeterminant).toBeCloseTo(Math.log(36), 14);
  });
  // D. Hilbert (1894): determinant of the 5 x 5 Hilbert matrix is 1 / 266716800000.
  test('golden: determinant of the Hilbert matrix of order 5', () => {
    expect(choleskyDecomposition(hilbert(5)).logDeterminant).toBeCloseTo(-Math.log(266716800000), 9);
  });
  test('refuses: what is not positive definite, with its row', () => {
    const refused = (rows: number[][]) => () => choleskyDecomposition(rows);
    expect(
      refused([
        [1, 2],
        [2, 4],
      ]),
    ).toThrow('not-positive-definite: row=1');
    expect(refused([[0]])).toThrow('not-positive-definite');
    expect(refused([[-1]])).toThrow('not-positive-definite');
    expect(refused([[1, 2, 3]])).toThrow('wrong-length');
    expect(refused([[NaN]])).toThrow('not-finite');
    expect(refused([])).toThrow('sample-size');
  });
});

describe('choleskySolve', () => {
  // The inverse of the Hilbert matrix has whole entries; its first column for order 4 is 16, -120, 240, -140.
  test('golden: first column of the inverse of the Hilbert matrix of order 4', () => {
    const decomposition = choleskyDecomposition(hilbert(4));
    const expected = [16, -120, 240, -140];
    const x = choleskySolve({ decomposition, values: [1, 0, 0, 0] });
    for (const [i, value] of x.entries()) expect(Math.abs(value / expected[i]! - 1)).toBeLessThan(1e-11);
  });
  test('refuses: a right side of another length', () => {
    expect(() => choleskySolve({ decomposition: choleskyDecomposition([[1]]), values: [1, 2] })).toThrow(
      'wrong-length',
    );
  });
});
