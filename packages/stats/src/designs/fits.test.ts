import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lackOfFit } from './lack-of-fit.ts';
import { linearFit } from './linear-fit.ts';

interface Filip {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly coefficients: readonly number[];
  readonly standardErrors: readonly number[];
  readonly residualSd: number;
  readonly rSquared: number;
}
const filip = JSON.parse(readFileSync(new URL('../../golden/nist-filip.json', import.meta.url), 'utf8')) as Filip;
const powers = (x: number): number[] => Array.from({ length: 11 }, (_, k) => x ** k);
const apart = (got: number | undefined, expected: number): number => Math.abs((got ?? NaN) / expected - 1);

describe('linearFit', () => {
  // NIST StRD, Filip: tenth-degree polynomial, condition 6e9 even with columns of one length.
  test('golden: Filip to 7 digits, and said to be ill-conditioned', () => {
    const fit = linearFit({ rows: filip.x.map(powers), values: filip.y, hasConstant: true });
    for (const [k, { estimate, standardError }] of fit.terms.entries()) {
      expect(apart(estimate, filip.coefficients[k]!)).toBeLessThan(1e-7);
      expect(apart(standardError, filip.standardErrors[k]!)).toBeLessThan(1e-7);
    }
    expect(apart(fit.residualSd, filip.residualSd)).toBeLessThan(1e-8);
    expect(apart(fit.rSquared, filip.rSquared)).toBeLessThan(1e-10);
    expect(fit).toMatchObject({ isIllConditioned: true, leftOut: [] });
  });

  // NIST StRD, NoInt2: x 4, 5, 6, y 3, 4, 4 through 0: b = 0.727272727272727, se 0.420827318078432E-01 (from memory).
  test('golden: NoInt2, R squared about 0', () => {
    const fit = linearFit({ rows: [[4], [5], [6]], values: [3, 4, 4], hasConstant: false });
    expect(apart(fit.terms[0]?.estimate, 8 / 11)).toBeLessThan(1e-15);
    expect(apart(fit.terms[0]?.standardError, 0.0420827318078432)).toBeLessThan(1e-14);
    expect(apart(fit.rSquared, 0.993348115299335)).toBeLessThan(1e-14);
  });

  // By hand: y 1, 3, 2 at x 0, 1, 2: b = 1.5 + 0.5 x, residuals -1/2, 1, -1/2, leverages 5/6, 1/3, 5/6.
  test('golden: a line through three points by hand, with PRESS', () => {
    const rows = [0, 1, 2].map((x) => [1, x]);
    const fit = linearFit({ rows, values: [1, 3, 2], hasConstant: true });
    expect(fit.residualSumOfSquares).toBeCloseTo(1.5, 14);
    expect(fit.rSquared).toBeCloseTo(0.25, 14);
    expect(fit.f).toBeCloseTo(1 / 3, 14);
    expect(fit.terms[1]?.t).toBeCloseTo(Math.sqrt(1 / 3), 14);
    // Student's t with 1 degree of freedom: P(|T| > t) = 1 - 2 arctan(t) / pi; the F test of one term is the same.
    const p = 1 - (2 * Math.atan(Math.sqrt(1 / 3))) / Math.PI;
    expect(fit.terms[1]?.p).toBeCloseTo(p, 13);
    expect(fit.p).toBeCloseTo(p, 13);
    expect(fit.press).toBeCloseTo(9 + 2.25 + 9, 12);
    expect(fit.lackOfFit).toBeUndefined();
  });

  test('property: PRESS is the sum of squares of the errors in predicting each run from the others', () => {
    const whole = fc.integer({ min: -50, max: 50 });
    fc.assert(
      fc.property(fc.array(fc.tuple(whole, whole, whole), { minLength: 7, maxLength: 7 }), (runs) => {
        const rows = runs.map(([a, b]) => [1, a, b]);
        const values = runs.map(([, , y]) => y);
        const fit = linearFit({ rows, values, hasConstant: true });
        fc.pre(fit.leftOut.length === 0 && fit.press !== undefined && Math.max(...fit.leverages) < 0.999);
        const errors = rows.map((row, i) => {
          const rest = linearFit({ rows: rows.toSpliced(i, 1), values: values.toSpliced(i, 1), hasConstant: true });
          return values[i]! - row.reduce((sum, x, k) => sum + x * (rest.terms[k]?.estimate ?? NaN), 0);
        });
        const press = errors.reduce((sum, error) => sum + error * error, 0);
        expect(Math.abs(fit.press - press)).toBeLessThanOrEqual(1e-6 * (1 + press));
      }),
      { seed: 3, numRuns: 50 },
    );
  });

  test('limit: a perfect fit has standard errors 0 and no t; without a degree of freedom there are none', () => {
    const perfect = linearFit({
      rows: [
        [1, 0],
        [1, 1],
        [1, 2],
      ],
      values: [1, 2, 3],
      hasConstant: true,
    });
    expect(perfect.terms[1]).toEqual({ estimate: 1, standardError: 0 });
    expect(perfect.f).toBeUndefined();
    const saturated = linearFit({
      rows: [
        [1, 0],
        [1, 1],
      ],
      values: [1, 3],
      hasConstant: true,
    });
    expect(saturated.terms[1]).toEqual({ estimate: 2 });
    expect(saturated.residualSd).toBeUndefined();
    expect(saturated.press).toBeUndefined();
  });

  test('limit: equal responses have no R squared', () => {
    expect(
      linearFit({
        rows: [
          [1, 1],
          [1, 2],
          [1, 3],
        ],
        values: [2, 2, 2],
        hasConstant: true,
      }).rSquared,
    ).toBeUndefined();
  });

  test.each([
    ['nothing', [], []],
    ['fewer runs than terms', [[1, 2]], [1]],
    ['NaN', [[1], [1]], [1, NaN]],
    ['unequal lengths', [[1], [1]], [1]],
  ])('refuses: %s', (_name, rows, values) => {
    expect(() => linearFit({ rows, values, hasConstant: true })).toThrow(/sample-size|not-finite|wrong-length/);
  });
});

describe('lackOfFit', () => {
  // By hand: repeats 1, 3 and 4, 6 at x = 0 and 1, one run 10 at x = 3; pure error 2 + 2 with 2 degrees of freedom.
  test('golden: by hand', () => {
    const rows = [0, 0, 1, 1, 3].map((x) => [1, x]);
    const values = [1, 3, 4, 6, 10];
    const fit = linearFit({ rows, values, hasConstant: true });
    const found = lackOfFit({ rows, values, ...fit });
    expect(found).toMatchObject({ pureErrorDf: 2, lackDf: 1 });
    expect(found?.pureErrorSumOfSquares).toBeCloseTo(4, 14);
    expect(found!.lackSumOfSquares + 4).toBeCloseTo(fit.residualSumOfSquares, 13);
    expect(found?.f).toBeCloseTo(found!.lackSumOfSquares / 2, 13);
  });
  test('limit: -0 is the same level as 0; repeats that agree exactly leave nothing to test against', () => {
    const task = { residualSumOfSquares: 1, degreesOfFreedom: 2 };
    const found = lackOfFit({ rows: [[0], [-0], [1]], values: [2, 2, 3], ...task });
    expect(found).toMatchObject({ pureErrorDf: 1, pureErrorSumOfSquares: 0 });
    expect(found?.f).toBeUndefined();
  });
});
