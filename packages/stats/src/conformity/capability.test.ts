import { capabilityExactLower, capabilityIndices, capabilityPercentile, oneSidedToleranceFactor } from '#inference';
import { normalCdf } from '#distributions';
import { describe, expect, test } from 'vitest';
import { capabilityFromSubgroups } from './index.ts';

describe('capabilityIndices', () => {
  test('golden: NIST/SEMATECH e-Handbook 6.1.6: limits 8 and 20, mean 16, sd 2 (from memory)', () => {
    const found = capabilityIndices({ n: 50, mean: 16, sd: 2, lower: 8, upper: 20 });
    expect([found.cp?.value, found.cpu, found.cpl, found.cpk.value]).toEqual([1, 2 / 3, 4 / 3, 2 / 3]);
  });
  test('limit: one limit has no Cp', () => {
    expect(capabilityIndices({ n: 50, mean: 16, sd: 2, upper: 20, target: 14 })).toMatchObject({
      cp: undefined,
      cpm: undefined,
    });
  });
  test('refuses: no n, no spread, no limit, NaN', () => {
    const ask = { n: 50, mean: 16, sd: 2, lower: 8, upper: 20 };
    expect(() => capabilityIndices({ ...ask, n: 1 })).toThrow('out-of-range');
    expect(() => capabilityIndices({ ...ask, sd: 0 })).toThrow('out-of-range');
    expect(() => capabilityIndices({ ...ask, upper: 8 })).toThrow('out-of-range');
    expect(() => capabilityIndices({ n: 50, mean: 16, sd: 2 })).toThrow('out-of-range');
    expect(() => capabilityIndices({ ...ask, mean: NaN })).toThrow('not-finite');
  });
});

describe('capabilityExactLower', () => {
  // An index equal to k/3 of a one-sided tolerance limit has the index of that content as its bound.
  test.each([5, 30, 200])('property: inverse of the one-sided tolerance factor, n %s', (n) => {
    const index = oneSidedToleranceFactor({ n, content: normalCdf(3), confidence: 0.95 }) / 3;
    expect(capabilityExactLower({ n, index })).toBeCloseTo(1, 8);
  });
  test('refuses: NaN', () => {
    expect(() => capabilityExactLower({ n: 30, index: NaN })).toThrow('not-finite');
  });
});

describe('capabilityPercentile', () => {
  test('property: Weibull of shape 1 is gamma of shape 1', () => {
    const one = capabilityPercentile({ of: { law: 'weibull', shape: 1, scale: 2 }, lower: 0.01, upper: 12 });
    const other = capabilityPercentile({ of: { law: 'gamma', shape: 1, scale: 2 }, lower: 0.01, upper: 12 });
    expect(one.ppk).toBeCloseTo(other.ppk, 12);
    expect(one.outside_ppm).toBeCloseTo(other.outside_ppm, 6);
  });
  test('refuses: no spread, no limit', () => {
    expect(() => capabilityPercentile({ of: { law: 'normal', mean: 1, sd: 0 }, upper: 2 })).toThrow('out-of-range');
    expect(() => capabilityPercentile({ of: { law: 'normal', mean: 1, sd: 1 } })).toThrow('out-of-range');
  });
});

describe('capabilityFromSubgroups', () => {
  test('golden: pooled and overall by hand', () => {
    const found = capabilityFromSubgroups({
      subgroups: [
        [1, 3],
        [5, 7],
      ],
      lower: -2,
      upper: 10,
    });
    expect(found.pooledSd).toBeCloseTo(Math.sqrt(2), 14);
    expect(found.overallSd).toBeCloseTo(Math.sqrt(20 / 3), 14);
    expect(found.within.cp?.value).toBeCloseTo(Math.sqrt(2), 12);
  });
  test('refuses: subgroups without spread', () => {
    expect(() =>
      capabilityFromSubgroups({
        subgroups: [
          [1, 1],
          [2, 2],
        ],
        upper: 10,
      }),
    ).toThrow('out-of-range');
  });
});
