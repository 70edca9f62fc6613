import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fisherSurvival } from '#distributions';
import {
  oneSampleStudent,
  pairedStudent,
  sampleSummary,
  satterthwaite,
  tukeyComparisons,
  twoSampleStudent,
  varianceInterval,
  varianceRatio,
} from '#inference';

const value = fc.integer({ min: -400, max: 400 }).map((whole) => whole / 8);
const sample = fc.array(value, { minLength: 3, maxLength: 30 }).filter((list) => Math.max(...list) > Math.min(...list));

describe('oneSampleStudent', () => {
  test('golden: Student (1908), additional hours of sleep (drug 1 less drug 2): t = -4.06, p = 0.0028', () => {
    // A. R. Cushny, A. R. Peebles (1905); R 4.2.2, data set sleep, prints -4.0621 and 0.002833 (from memory).
    const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
    const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];
    const found = pairedStudent({ first, second });
    expect(found.statistic).toBeCloseTo(-4.0621, 4);
    expect(found.pValue).toBeCloseTo(0.002833, 6);
    // The same data as two samples, R: t = -1.8608, df = 17.776, p = 0.07939.
    const apart = twoSampleStudent({ first, second });
    expect(apart.statistic).toBeCloseTo(-1.8608, 4);
    expect(apart.degreesOfFreedom).toBeCloseTo(17.776, 3);
    expect(apart.pValue).toBeCloseTo(0.07939, 5);
  });

  test('property: the p value at a limit is what the confidence leaves', () => {
    fc.assert(
      fc.property(sample, fc.double({ min: 0.5, max: 0.999, noNaN: true }), (values, confidence) => {
        const { low, high } = oneSampleStudent({ values, reference: 0, confidence });
        for (const reference of [low, high])
          expect(Math.abs(oneSampleStudent({ values, reference }).pValue - (1 - confidence))).toBeLessThan(1e-9);
      }),
      { seed: 81 },
    );
  });

  test('refuses: one value, all equal, NaN, a confidence of 1', () => {
    expect(() => oneSampleStudent({ values: [1], reference: 0 })).toThrow('sample-size');
    expect(() => oneSampleStudent({ values: [2, 2, 2], reference: 0 })).toThrow(/standardError/);
    expect(() => oneSampleStudent({ values: [1, 2], reference: NaN })).toThrow(/reference/);
    expect(() => oneSampleStudent({ values: [1, 2], reference: 0, confidence: 1 })).toThrow(/confidence/);
  });
});

describe('twoSampleStudent and pairedStudent', () => {
  test('property: pooled is Welch for samples of one size; t squared is F of two groups', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(value, value), { minLength: 3, maxLength: 20 }), (pairs) => {
        const [first, second] = [pairs.map(([x]) => x), pairs.map(([, y]) => y)];
        fc.pre(new Set(first).size > 1 && new Set(second).size > 1);
        const pooled = twoSampleStudent({ first, second, variances: 'equal' });
        const welch = twoSampleStudent({ first, second });
        expect(Math.abs(pooled.statistic - welch.statistic)).toBeLessThan(1e-10 * (1 + Math.abs(welch.statistic)));
        expect(welch.degreesOfFreedom).toBeLessThanOrEqual(pooled.degreesOfFreedom * (1 + 1e-12));
        const x = pooled.statistic * pooled.statistic;
        const p = fisherSurvival({ x, numeratorDf: 1, denominatorDf: pooled.degreesOfFreedom });
        expect(Math.abs(p - pooled.pValue)).toBeLessThan(1e-12);
      }),
      { seed: 82 },
    );
  });

  test('property: changing places changes the sign', () => {
    fc.assert(
      fc.property(sample, sample, (first, second) => {
        const [one, other] = [twoSampleStudent({ first, second }), twoSampleStudent({ first: second, second: first })];
        expect(one.difference).toBe(0 - other.difference);
        expect(Math.abs(one.pValue - other.pValue)).toBeLessThan(1e-13);
      }),
      { seed: 83 },
    );
  });

  test('refuses: pairs without a partner, no spread at all', () => {
    expect(() => pairedStudent({ first: [1, 2], second: [1, 2, 3] })).toThrow('wrong-length');
    expect(() => pairedStudent({ first: [2, 3, 4], second: [1, 2, 3] })).toThrow(/standardError/);
    expect(() => twoSampleStudent({ first: [1, 1], second: [2, 2] })).toThrow(/estimate/);
    expect(() => twoSampleStudent({ first: [1, 1], second: [2, 2], variances: 'equal' })).toThrow(/standardError/);
    expect(() => twoSampleStudent({ first: [1], second: [2, 3] })).toThrow('sample-size');
    expect(() => twoSampleStudent({ first: [1, NaN], second: [2, 3] })).toThrow('not-finite');
  });
});

describe('varianceRatio and varianceInterval', () => {
  test('property: limits of the ratio hold 1 where p is above what the confidence leaves', () => {
    fc.assert(
      fc.property(sample, sample, (first, second) => {
        const { ratio, pValue, low, high } = varianceRatio({ first, second });
        expect(low).toBeLessThan(ratio);
        expect(high).toBeGreaterThan(ratio);
        expect(low < 1 && 1 < high).toBe(pValue > 0.05);
      }),
      { seed: 84 },
    );
  });

  test('golden: s = 0.1, n = 10: sd between 0.0688 and 0.1826 (ISO 2854 factors 0.688 and 1.826, from memory)', () => {
    const { low, high } = varianceInterval({ variance: 0.01, degreesOfFreedom: 9 });
    expect(Math.sqrt(low)).toBeCloseTo(0.0688, 4);
    expect(Math.sqrt(high)).toBeCloseTo(0.1826, 4);
  });

  test('refuses: a variance of 0 in a ratio, a negative one, NaN', () => {
    expect(() => varianceRatio({ first: [1, 1, 1], second: [1, 2, 3] })).toThrow(/Variance/);
    expect(() => varianceRatio({ first: [1, 2], second: [1, 2], confidence: 0 })).toThrow(/confidence/);
    expect(() => varianceInterval({ variance: -1, degreesOfFreedom: 3 })).toThrow(/variance/);
    expect(() => varianceInterval({ variance: NaN, degreesOfFreedom: 3 })).toThrow(/variance/);
    expect(() => varianceInterval({ variance: 1, degreesOfFreedom: 0 })).toThrow(/degrees/);
  });
});

describe('satterthwaite', () => {
  test('property: one mean square keeps its degrees of freedom; several lie between the least and the sum', () => {
    const part = fc.tuple(
      fc.double({ min: 0.1, max: 10, noNaN: true }),
      fc.double({ min: 0.1, max: 5, noNaN: true }),
      fc.double({ min: 1, max: 100, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
        const own = parts.map(([, , df]) => df);
        const { degreesOfFreedom } = satterthwaite({
          meanSquares: parts.map(([meanSquare]) => meanSquare),
          coefficients: parts.map(([, coefficient]) => coefficient),
          degreesOfFreedom: own,
        });
        expect(degreesOfFreedom).toBeGreaterThanOrEqual(Math.min(...own) * (1 - 1e-12));
        expect(degreesOfFreedom).toBeLessThanOrEqual(own.reduce((sum, df) => sum + df, 0) * (1 + 1e-12));
      }),
      { seed: 85 },
    );
  });

  test('refuses: unlike lengths, nothing, a negative sum, NaN', () => {
    const one = { meanSquares: [1], coefficients: [1], degreesOfFreedom: [3] };
    expect(() => satterthwaite({ ...one, coefficients: [1, 2] })).toThrow('wrong-length');
    expect(() => satterthwaite({ meanSquares: [], coefficients: [], degreesOfFreedom: [] })).toThrow('wrong-length');
    expect(() => satterthwaite({ ...one, coefficients: [-1] })).toThrow(/estimate/);
    expect(() => satterthwaite({ ...one, meanSquares: [NaN] })).toThrow('not-finite');
    expect(() => satterthwaite({ ...one, degreesOfFreedom: [0] })).toThrow(/degrees/);
  });
});

describe('tukeyComparisons', () => {
  test('property: two groups give the pooled t test', () => {
    fc.assert(
      fc.property(sample, sample, (first, second) => {
        const [pair] = tukeyComparisons({ groups: [first, second] });
        const t = twoSampleStudent({ first: second, second: first, variances: 'equal' });
        expect(Math.abs(pair!.pValue - t.pValue)).toBeLessThan(1e-9);
        expect(Math.abs(pair!.low - t.low)).toBeLessThan(1e-7 * (1 + Math.abs(t.low)));
      }),
      { seed: 86, numRuns: 15 },
    );
  });

  test('property: every pair once, in order; differences of the means', () => {
    const groups = [
      [1, 2, 4],
      [2, 2, 3],
      [9, 8, 7],
    ];
    const pairs = tukeyComparisons({ groups });
    expect(pairs.map(({ first, second }) => `${second + 1}-${first + 1}`)).toEqual(['2-1', '3-1', '3-2']);
    const means = groups.map((values) => sampleSummary({ values }).mean);
    for (const { first, second, difference } of pairs) expect(difference).toBe(means[second]! - means[first]!);
  });

  test('refuses: one group, a group of one, no spread', () => {
    expect(() => tukeyComparisons({ groups: [[1, 2]] })).toThrow('sample-size');
    expect(() => tukeyComparisons({ groups: [[1, 2], [1]] })).toThrow('sample-size');
    expect(() =>
      tukeyComparisons({
        groups: [
          [1, 1],
          [2, 2],
        ],
      }),
    ).toThrow(/within/);
  });
});
