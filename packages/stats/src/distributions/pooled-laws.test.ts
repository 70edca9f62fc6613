import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  noncentralStudentCdf,
  noncentralStudentQuantile,
  noncentralStudentSurvival,
  normalCdf,
  studentCdf,
  studentizedRangeCdf,
  studentizedRangeQuantile,
  studentizedRangeSurvival,
  studentSurvival,
} from '#distributions';
import { chiAverage } from './chi-average.ts';

describe('chiAverage', () => {
  test.each([1, 1.5, 4, 29, 1000, 1e6, 1e9])(
    'property: the mean of 1 is 1, of S^2 is 1, %s degrees of freedom',
    (df) => {
      expect(Math.abs(chiAverage({ degreesOfFreedom: df, of: () => 1 }) - 1)).toBeLessThan(1e-10);
      expect(Math.abs(chiAverage({ degreesOfFreedom: df, of: (s) => s * s }) - 1)).toBeLessThan(1e-10);
    },
  );
});

describe('noncentralStudent', () => {
  const law = fc.record({
    degreesOfFreedom: fc.double({ min: 1, max: 500, noNaN: true }),
    noncentrality: fc.double({ min: -40, max: 40, noNaN: true }),
  });

  test('property: at noncentrality 0 it is Student, at x = 0 it is normal', () => {
    // Just beside 0 the mean over S runs, at 0 the central law answers.
    for (const x of [-30, -2, 0.5, 4, 100]) {
      const point = { x, degreesOfFreedom: 7.5 };
      const beside = noncentralStudentCdf({ ...point, noncentrality: 1e-14 });
      expect(Math.abs(beside / studentCdf(point) - 1)).toBeLessThan(1e-10);
      expect(noncentralStudentSurvival({ ...point, noncentrality: 0 })).toBe(studentSurvival(point));
    }
    expect(noncentralStudentCdf({ x: 0, degreesOfFreedom: 5, noncentrality: 1.25 })).toBe(normalCdf(-1.25));
  });

  test('property: both tails make 1, and the mirror image is the same', () => {
    fc.assert(
      fc.property(law, fc.double({ min: -60, max: 60, noNaN: true }), ({ degreesOfFreedom, noncentrality }, x) => {
        const point = { x, degreesOfFreedom, noncentrality };
        expect(Math.abs(noncentralStudentCdf(point) + noncentralStudentSurvival(point) - 1)).toBeLessThan(1e-11);
        const mirror = { x: -x, degreesOfFreedom, noncentrality: -noncentrality };
        expect(noncentralStudentCdf(point)).toBe(noncentralStudentSurvival(mirror));
      }),
      { seed: 61, numRuns: 60 },
    );
  });

  test('property: quantiles undo either tail and rise with p', () => {
    fc.assert(
      fc.property(law, fc.double({ min: 1e-8, max: 0.49, noNaN: true }), (one, p) => {
        const low = noncentralStudentQuantile({ p, ...one });
        expect(Math.abs(noncentralStudentCdf({ x: low, ...one }) / p - 1)).toBeLessThan(1e-8);
        const high = noncentralStudentQuantile({ p, ...one, tail: 'upper' });
        expect(Math.abs(noncentralStudentSurvival({ x: high, ...one }) / p - 1)).toBeLessThan(1e-8);
        expect(low).toBeLessThanOrEqual(high);
      }),
      { seed: 62, numRuns: 60 },
    );
  });

  test.each([NaN, Infinity, 1e5])('refuses: noncentrality %s', (noncentrality) => {
    expect(() => noncentralStudentCdf({ x: 1, degreesOfFreedom: 3, noncentrality })).toThrow(/noncentrality/);
    expect(() => noncentralStudentQuantile({ p: 0.5, degreesOfFreedom: 3, noncentrality })).toThrow(/noncentrality/);
  });

  test.each([NaN, 0, 1])('refuses: p = %s', (p) => {
    expect(() => noncentralStudentQuantile({ p, degreesOfFreedom: 3, noncentrality: 1 })).toThrow(/p=/);
    expect(() => noncentralStudentCdf({ x: NaN, degreesOfFreedom: 3, noncentrality: 1 })).toThrow(/x=/);
    expect(() => noncentralStudentSurvival({ x: 1, degreesOfFreedom: 0.5, noncentrality: 1 })).toThrow(/degrees/);
  });
});

describe('studentizedRange', () => {
  // Upper 5 % points, E. S. Pearson, H. O. Hartley, Biometrika Tables 1, table 29 (from memory).
  test.each([
    [2, 10, 3.151],
    [3, 10, 3.877],
    [5, 20, 4.232],
    [10, 60, 4.646],
    [3, 1e9, 3.314],
    [10, 1e9, 4.474],
  ])('golden: %s groups, %s degrees of freedom', (groupCount, degreesOfFreedom, q) => {
    const got = studentizedRangeQuantile({ p: 0.05, groupCount, degreesOfFreedom, tail: 'upper' });
    expect(Math.abs(got - q)).toBeLessThan(1.01e-3);
  });

  test('property: with two groups it is root 2 times |t|, two algorithms', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 300, noNaN: true }),
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        (degreesOfFreedom, t) => {
          const point = { x: t * Math.SQRT2, groupCount: 2, degreesOfFreedom };
          const both = 2 * studentSurvival({ x: t, degreesOfFreedom });
          expect(Math.abs(studentizedRangeSurvival(point) / both - 1)).toBeLessThan(1e-8);
          expect(Math.abs(studentizedRangeCdf(point) + both - 1)).toBeLessThan(1e-10);
        },
      ),
      { seed: 63, numRuns: 40 },
    );
  });

  test('property: quantiles undo the tails; more groups, a wider range', () => {
    for (const [groupCount, degreesOfFreedom] of [
      [3, 2],
      [7, 12.5],
      [40, 100],
      [200, 1000],
    ] as const)
      for (const p of [0.001, 0.05, 0.5]) {
        const law = { groupCount, degreesOfFreedom };
        const x = studentizedRangeQuantile({ p, ...law, tail: 'upper' });
        expect(Math.abs(studentizedRangeSurvival({ x, ...law }) / p - 1)).toBeLessThan(1e-8);
        expect(studentizedRangeSurvival({ x, ...law, groupCount: groupCount + 1 })).toBeGreaterThan(p);
      }
  });

  test('limit: at and below 0', () => {
    const law = { groupCount: 4, degreesOfFreedom: 9 };
    expect([studentizedRangeCdf({ x: 0, ...law }), studentizedRangeSurvival({ x: -1, ...law })]).toEqual([0, 1]);
  });

  test.each([NaN, 1, 2.5, 1001])('refuses: groupCount %s', (groupCount) => {
    expect(() => studentizedRangeCdf({ x: 1, groupCount, degreesOfFreedom: 9 })).toThrow(/groupCount/);
    expect(() => studentizedRangeQuantile({ p: 0.5, groupCount, degreesOfFreedom: 9 })).toThrow(/groupCount/);
  });

  test.each([NaN, 0.5, Infinity])('refuses: degreesOfFreedom %s', (degreesOfFreedom) => {
    expect(() => studentizedRangeSurvival({ x: 1, groupCount: 3, degreesOfFreedom })).toThrow(/degrees/);
    expect(() => studentizedRangeQuantile({ p: 0.5, groupCount: 3, degreesOfFreedom })).toThrow(/degrees/);
  });
});
