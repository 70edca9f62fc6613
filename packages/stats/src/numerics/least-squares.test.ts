import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastSquares } from './least-squares.ts';

/** NIST StRD: 1, x ... x^5 at x = 0..20, all whole numbers: exact in doubles. */
const WAMPLER = Array.from({ length: 21 }, (_, x) => [1, x, x * x, x * x * x, x * x * x * x, x * x * x * x * x]);
const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
/** The differences that NIST adds to Wampler1 (of the file), times 1, 100 and 10000: Wampler3, 4 and 5. */
const NOISE = [759, -2048, 2048, -2048, 2523, -2048, 2048, -2048, 1838, -2048, 2048];

const smallMatrix = fc.tuple(fc.integer({ min: 4, max: 9 }), fc.integer({ min: 1, max: 4 })).chain(([n, p]) => {
  const entry = fc.integer({ min: -1000, max: 1000 }).map((whole) => whole / 100);
  const row = fc.array(entry, { minLength: p, maxLength: p });
  return fc.record({
    rows: fc.array(row, { minLength: n, maxLength: n }),
    values: fc.array(entry, { minLength: n, maxLength: n }),
  });
});

describe('leastSquares', () => {
  // NIST StRD, Wampler1: y = 1 + x + ... + x^5, certified coefficients 1 and residual sum of squares 0.
  test('golden: Wampler1 is found without an error in the last bit', () => {
    const { coefficients, residualSumOfSquares, rank } = leastSquares({ rows: WAMPLER, values: WAMPLER.map(sumOf) });
    expect(coefficients).toEqual([1, 1, 1, 1, 1, 1]);
    expect([residualSumOfSquares, rank]).toEqual([0, 6]);
  });

  // NIST StRD, Wampler2: coefficients 1, 0.1, ... 0.00001.
  test('golden: Wampler2 to 12 digits, y being rounded to doubles', () => {
    const expected = [1, 0.1, 0.01, 0.001, 0.0001, 0.00001];
    const values = WAMPLER.map((row) => sumOf(row.map((power, k) => power * expected[k]!)));
    const { coefficients } = leastSquares({ rows: WAMPLER, values });
    for (const [k, value] of coefficients.entries()) expect(Math.abs(value / expected[k]! - 1)).toBeLessThan(1e-12);
  });

  // NIST StRD, Wampler3, 4, 5: noise orthogonal to the columns; certified coefficients 1, residual sum 83554268 times 1, 1e4, 1e8.
  test.each([1, 100, 10000])('golden: Wampler3 to 5, noise times %s', (times) => {
    const noise = [...NOISE, ...NOISE.slice(0, -1).reverse()];
    const values = WAMPLER.map((row, x) => sumOf(row) + times * noise[x]!);
    const { coefficients, residualSumOfSquares } = leastSquares({ rows: WAMPLER, values });
    for (const value of coefficients) expect(Math.abs(value - 1)).toBeLessThan(1e-11);
    expect(Math.abs(residualSumOfSquares / (83554268 * times * times) - 1)).toBeLessThan(1e-14);
  });

  // Exact by hand for whole powers of 1/64 (Läuchli's matrix): X'X = ee' + d^2 I, its inverse is (I - ee'/(3 + d^2)) / d^2.
  test('golden: nearly dependent columns that the normal equations cannot tell apart', () => {
    const d = 1 / 268435456;
    const rows = [
      [1, 1, 1],
      [d, 0, 0],
      [0, d, 0],
      [0, 0, d],
    ];
    const { inverse, rank, condition } = leastSquares({ rows, values: [3, d, d, d] });
    expect(rank).toBe(3);
    expect(condition).toBeGreaterThan(1e8);
    for (const [i, row] of inverse.entries())
      for (const [j, value] of row.entries()) {
        const exact = ((i === j ? 1 : 0) - 1 / (3 + d * d)) / (d * d);
        expect(Math.abs(value / exact - 1)).toBeLessThan(1e-12);
      }
  });

  test('golden: a column that is the sum of two others is named, and what can be fitted is', () => {
    const rows = [
      [1, 1, 0],
      [1, 1, 0],
      [1, 0, 1],
      [1, 0, 1],
    ];
    const found = leastSquares({ rows, values: [1, 3, 4, 8], pivoting: 'first' });
    expect(found).toMatchObject({ rank: 2, dependent: [2] });
    expect(found.coefficients[0]).toBeCloseTo(6, 14);
    expect(found.coefficients[1]).toBeCloseTo(-4, 14);
    expect(found.coefficients[2]).toBe(0);
    expect(found.residualSumOfSquares).toBeCloseTo(10, 13);
  });

  test('property: what is left over is orthogonal to every column; leverages add up to the rank', () => {
    fc.assert(
      fc.property(smallMatrix, ({ rows, values }) => {
        const found = leastSquares({ rows: Object.freeze(rows), values: Object.freeze(values) });
        for (const j of rows[0]!.keys()) {
          const products = rows.map((row, i) => row[j]! * found.residuals[i]!);
          const size = sumOf(rows.map((row) => Math.abs(row[j]!))) * (1 + Math.max(...values.map(Math.abs)));
          expect(Math.abs(sumOf(products))).toBeLessThanOrEqual(1e-10 * size + 1e-300);
        }
        expect(sumOf(found.leverages)).toBeCloseTo(found.rank, 10);
      }),
      { seed: 5 },
    );
  });

  test('property: taking the columns in order gives the same fit', () => {
    fc.assert(
      fc.property(smallMatrix, ({ rows, values }) => {
        const largest = leastSquares({ rows, values });
        fc.pre(largest.dependent.length === 0 && largest.condition < 1e6);
        const first = leastSquares({ rows, values, pivoting: 'first' });
        for (const [k, value] of first.coefficients.entries())
          expect(Math.abs(value - largest.coefficients[k]!)).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(value)));
      }),
      { seed: 6 },
    );
  });

  test('limit: fewer rows than columns leave columns over; a column of zeros is dependent', () => {
    expect(leastSquares({ rows: [[1, 2, 3]], values: [6] })).toMatchObject({ rank: 1, residualSumOfSquares: 0 });
    expect(
      leastSquares({
        rows: [
          [1, 0],
          [1, 0],
        ],
        values: [2, 4],
      }),
    ).toMatchObject({ coefficients: [3, 0], dependent: [1] });
  });

  test.each([
    ['no rows', [], []],
    ['rows of unequal length', [[1, 2], [1]], [1, 2]],
    ['NaN in the matrix', [[1], [NaN]], [1, 2]],
    ['an infinite value', [[1], [2]], [1, Infinity]],
    ['too few values', [[1], [2]], [1]],
  ])('refuses: %s', (_name, rows, values) => {
    expect(() => leastSquares({ rows, values })).toThrow(/sample-size|wrong-length|not-finite/);
  });
});
