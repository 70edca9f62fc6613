import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { binomialCdf, binomialSurvival, poissonCdf, poissonSurvival } from '#distributions';
import { clopperPearsonInterval, garwoodInterval, wilsonInterval } from '#inference';

const share = fc
  .integer({ min: 1, max: 400 })
  .chain((n) => fc.record({ n: fc.constant(n), count: fc.integer({ min: 0, max: n }) }));

describe('clopperPearsonInterval', () => {
  test('property: at its limits the count is just as unlikely as the confidence says', () => {
    fc.assert(
      fc.property(share, ({ n, count }) => {
        const { low, high, upperOneSided, lowerOneSided } = clopperPearsonInterval({ n, count });
        if (count > 0) {
          expect(binomialSurvival({ k: count - 1, n, p: low })).toBeCloseTo(0.025, 10);
          expect(binomialSurvival({ k: count - 1, n, p: lowerOneSided })).toBeCloseTo(0.05, 10);
        } else expect(low).toBe(0);
        if (count < n) {
          expect(binomialCdf({ k: count, n, p: high })).toBeCloseTo(0.025, 10);
          expect(binomialCdf({ k: count, n, p: upperOneSided })).toBeCloseTo(0.05, 10);
        } else expect(high).toBe(1);
      }),
      { seed: 91 },
    );
  });

  test('golden: none of 59: at most 5 % with confidence 95 % (0.95^59 = 0.0485)', () => {
    expect(clopperPearsonInterval({ n: 59, count: 0 }).upperOneSided).toBeLessThan(0.05);
    expect(clopperPearsonInterval({ n: 58, count: 0 }).upperOneSided).toBeGreaterThan(0.05);
  });

  test.each([
    [-1, 10],
    [11, 10],
    [1.5, 10],
    [NaN, 10],
    [0, 0],
  ])('refuses: %s of %s', (count, n) => {
    expect(() => clopperPearsonInterval({ count, n })).toThrow(/count|n=/);
    expect(() => wilsonInterval({ count, n })).toThrow(/count|n=/);
  });

  test.each([0, 1, NaN])('refuses: confidence %s', (confidence) => {
    expect(() => clopperPearsonInterval({ count: 1, n: 2, confidence })).toThrow(/confidence/);
    expect(() => wilsonInterval({ count: 1, n: 2, confidence })).toThrow(/confidence/);
    expect(() => garwoodInterval({ count: 1, confidence })).toThrow(/confidence/);
  });
});

describe('wilsonInterval', () => {
  test('property: inside 0 and 1, around the estimate, mirrored', () => {
    fc.assert(
      fc.property(share, ({ n, count }) => {
        const { estimate, low, high } = wilsonInterval({ n, count });
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
        expect(low).toBeLessThanOrEqual(estimate);
        expect(high).toBeGreaterThanOrEqual(estimate);
        expect(Math.abs(wilsonInterval({ n, count: n - count }).low - (1 - high))).toBeLessThan(1e-14);
      }),
      { seed: 92 },
    );
  });
});

describe('garwoodInterval', () => {
  test('property: at its limits the count is just as unlikely as the confidence says', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2000 }), (count) => {
        const { low, high, upperOneSided } = garwoodInterval({ count });
        if (count > 0) expect(poissonSurvival({ k: count - 1, mean: low })).toBeCloseTo(0.025, 10);
        expect(poissonCdf({ k: count, mean: high })).toBeCloseTo(0.025, 10);
        expect(poissonCdf({ k: count, mean: upperOneSided })).toBeCloseTo(0.05, 10);
      }),
      { seed: 93 },
    );
  });

  test('golden: none seen: at most 3.0 ("rule of three", -ln 0.05 = 2.9957)', () => {
    expect(garwoodInterval({ count: 0 }).upperOneSided).toBeCloseTo(2.995732273553991, 12);
    expect(garwoodInterval({ count: 0 }).low).toBe(0);
  });

  test.each([NaN, -1, 0.5])('refuses: count %s', (count) => {
    expect(() => garwoodInterval({ count })).toThrow(/count/);
  });
});
