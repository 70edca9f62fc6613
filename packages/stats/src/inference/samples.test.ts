import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { grubbsCritical, grubbsOutlier, sampleQuantile, sampleSummary, shapiroWilk } from '#inference';

const values = fc.array(fc.double({ min: -1000, max: 1000, noNaN: true }), { minLength: 3, maxLength: 60 });
const spread = values.filter((list) => Math.max(...list) - Math.min(...list) > 1e-3);
const shuffled = (list: readonly number[]): number[] => [...list].reverse();

describe('sampleSummary', () => {
  test('property: a large common part changes nothing but the mean', () => {
    // Whole numbers: exact beside 2^40.
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 50 }), (list) => {
        const here = sampleSummary({ values: list });
        const far = sampleSummary({ values: list.map((value) => value + 2 ** 40) });
        expect(Math.abs(far.variance - here.variance)).toBeLessThanOrEqual(1e-13 * here.variance);
      }),
      { seed: 71 },
    );
  });

  test('property: order does not matter, the unit only scales', () => {
    fc.assert(
      fc.property(values, (list) => {
        const { mean, sd } = sampleSummary({ values: list });
        expect(Math.abs(sampleSummary({ values: shuffled(list) }).mean - mean)).toBeLessThan(1e-12);
        const grams = sampleSummary({ values: list.map((value) => value * 2 ** -10) });
        expect(grams.sd).toBe(sd * 2 ** -10);
      }),
      { seed: 72 },
    );
  });

  test('limit: all equal, and frozen input', () => {
    expect(sampleSummary({ values: Object.freeze([5, 5, 5]) })).toMatchObject({
      mean: 5,
      sd: 0,
      least: 5,
      greatest: 5,
    });
  });

  test.each([[[]], [[1]]])('refuses: %j -> sample-size', (list) => {
    expect(() => sampleSummary({ values: list })).toThrow('sample-size');
  });
  test.each([[[1, NaN]], [[Infinity, 1]]])('refuses: %j -> not-finite', (list) => {
    expect(() => sampleSummary({ values: list })).toThrow('not-finite');
  });
});

describe('sampleQuantile', () => {
  test('property: from least to greatest, rising; the median is the same under every definition', () => {
    fc.assert(
      fc.property(values, (list) => {
        const of = (p: number): number => sampleQuantile({ values: list, p });
        expect([of(0), of(1)]).toEqual([Math.min(...list) + 0, Math.max(...list) + 0]);
        expect(of(0.3)).toBeLessThanOrEqual(of(0.6));
        for (const definition of ['hyndman-fan-6', 'hyndman-fan-7'] as const)
          expect(Math.abs(sampleQuantile({ values: list, p: 0.5, definition }) - of(0.5))).toBeLessThan(1e-9);
      }),
      { seed: 73 },
    );
  });

  test('limit: one value', () => {
    expect(sampleQuantile({ values: [7], p: 0.3 })).toBe(7);
  });

  test('refuses: nothing, NaN, p outside', () => {
    expect(() => sampleQuantile({ values: [], p: 0.5 })).toThrow('sample-size');
    expect(() => sampleQuantile({ values: [1, NaN], p: 0.5 })).toThrow('not-finite');
    for (const p of [NaN, -0.1, 1.1]) expect(() => sampleQuantile({ values: [1, 2], p })).toThrow(/p=/);
  });
});

describe('shapiroWilk', () => {
  test('golden: weights of eleven men, W = 0.79 (Shapiro, Wilk 1965, example; from memory)', () => {
    const { statistic } = shapiroWilk({ values: [148, 154, 158, 160, 161, 162, 166, 170, 182, 195, 236] });
    expect(Math.abs(statistic - 0.79)).toBeLessThan(5e-3);
  });

  test('property: place, unit and order do not matter', () => {
    fc.assert(
      fc.property(spread, (list) => {
        const { statistic, pValue } = shapiroWilk({ values: list });
        expect(statistic).toBeGreaterThan(0);
        expect(statistic).toBeLessThanOrEqual(1);
        expect(pValue).toBeGreaterThanOrEqual(0);
        expect(pValue).toBeLessThanOrEqual(1);
        const other = shapiroWilk({ values: shuffled(list.map((value) => 8 * value)) });
        expect(Math.abs(other.statistic - statistic)).toBeLessThan(1e-10);
      }),
      { seed: 74 },
    );
  });

  test('limit: three values evenly spaced are as normal as can be, two equal the least', () => {
    expect(shapiroWilk({ values: [1, 2, 3] }).pValue).toBeCloseTo(1, 6);
    // W of three values is never below 3/4.
    const { statistic, pValue } = shapiroWilk({ values: [1, 1, 3] });
    expect(statistic).toBeCloseTo(0.75, 12);
    expect(pValue).toBeCloseTo(0, 6);
  });

  test('refuses: two values, all equal, NaN', () => {
    expect(() => shapiroWilk({ values: [1, 2] })).toThrow('sample-size');
    expect(() => shapiroWilk({ values: Array.from({ length: 5001 }, (_, i) => i) })).toThrow('sample-size');
    expect(() => shapiroWilk({ values: [4, 4, 4, 4] })).toThrow(/sd/);
    expect(() => shapiroWilk({ values: [1, 2, NaN] })).toThrow('not-finite');
  });
});

describe('grubbsCritical and grubbsOutlier', () => {
  // One-sided 0.025, that is two-sided 0.05: ASTM E178, table 1, 3 decimals (from memory).
  test.each([
    [3, 1.155],
    [5, 1.715],
    [8, 2.126],
    [15, 2.549],
    [30, 2.908],
  ])('golden: n = %s', (n, critical) => {
    expect(Math.abs(grubbsCritical({ n }) - critical)).toBeLessThan(1.01e-3);
    expect(grubbsCritical({ n, significance: 0.025, sides: 1 })).toBeCloseTo(grubbsCritical({ n }), 10);
  });

  test('golden: NIST/SEMATECH e-Handbook 1.3.5.17.1: mass spectrometer, G = 2.4687, critical 2.032 at 8 values', () => {
    const sample = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];
    const found = grubbsOutlier({ values: sample });
    expect(found).toMatchObject({ index: 7, value: 245.57, isOutlying: true });
    expect(Math.abs(found.statistic - 2.4687)).toBeLessThan(5e-4);
    // The page prints the one-sided value.
    expect(Math.abs(grubbsCritical({ n: 8, sides: 1 }) - 2.032)).toBeLessThan(5.01e-4);
  });

  test('property: no value lies farther than (n - 1) / root n', () => {
    fc.assert(
      fc.property(spread, (list) => {
        const { statistic, critical } = grubbsOutlier({ values: list });
        const greatest = (list.length - 1) / Math.sqrt(list.length);
        expect(statistic).toBeLessThanOrEqual(greatest * (1 + 1e-12));
        expect(critical).toBeLessThan(greatest);
      }),
      { seed: 75 },
    );
  });

  test('refuses: too few, all equal, a significance of 0', () => {
    expect(() => grubbsOutlier({ values: [1, 2] })).toThrow(/n=/);
    expect(() => grubbsOutlier({ values: [2, 2, 2] })).toThrow(/sd/);
    expect(() => grubbsCritical({ n: 5, significance: 0 })).toThrow(/significance/);
    expect(() => grubbsCritical({ n: NaN })).toThrow(/n=/);
  });
});
