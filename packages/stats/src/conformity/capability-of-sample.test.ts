import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { capabilityIndices, sampleSummary } from '#inference';
import { fillNormals, seedStream } from '#random';
import { capabilityOfSample } from './capability-of-sample.ts';
import { fittedLaw } from './fitted-law.ts';

const normals = (count: number, seed: number): number[] => {
  const target = new Float64Array(count);
  fillNormals(seedStream({ seed }), target);
  return [...target];
};
/** Invented; the fit beside it is that of scipy 1.17.1, weibull_min.fit(floc=0). */
const WEIBULL = [14.46, 46.6, 32.17, 44.71, 60.25, 32.91, 35.03, 14.63, 23.74, 34.78, 41.67, 49.03];
const SCIPY = { shape: 3.04429, scale: 40.1643 };

describe('fittedLaw', () => {
  test('golden: Weibull by maximum likelihood, scipy 1.17.1 weibull_min.fit(floc=0)', () => {
    const found = fittedLaw(WEIBULL, 'weibull');
    expect(found).toMatchObject({ law: 'weibull' });
    if (found.law !== 'weibull') return;
    expect(found.shape).toBeCloseTo(SCIPY.shape, 4);
    expect(found.scale).toBeCloseTo(SCIPY.scale, 3);
  });
  test('golden: half-normal and lognormal by hand', () => {
    expect(fittedLaw([3, 4, 0, 5], 'half-normal')).toEqual({ law: 'half-normal', scale: Math.sqrt(12.5) });
    const found = fittedLaw([1, 10, 100], 'lognormal');
    expect(found).toMatchObject({ law: 'lognormal' });
    if (found.law === 'lognormal') expect([found.mu, found.sigma]).toEqual([2.302585092994046, 2.302585092994046]);
  });
  test('refuses: a value that the law cannot have, values all alike, too few, NaN', () => {
    expect(() => fittedLaw([1, 2, 0], 'lognormal')).toThrow('out-of-range');
    expect(() => fittedLaw([1, 2, -1], 'half-normal')).toThrow('out-of-range');
    expect(() => fittedLaw([2, 2, 2], 'normal')).toThrow('out-of-range');
    expect(() => fittedLaw([1, 2], 'normal')).toThrow('sample-size');
    expect(() => fittedLaw([1, 2, NaN], 'weibull')).toThrow('not-finite');
  });
});

describe('capabilityOfSample', () => {
  test.each([50, 200])('property: for a normal law the limits are near those of chi-square and Bissell, n %s', (n) => {
    const values = normals(n, 8).map((z) => 400 + 5 * z);
    const { mean, sd } = sampleSummary({ values });
    const limits = { lower: 380, upper: 425 };
    const known = capabilityIndices({ n, mean, sd, ...limits });
    const found = capabilityOfSample({ values, law: 'normal', ...limits });
    // 0.135 % is a rounded figure: its quantile is 2.99998, not 3.
    expect(found.ppk.value).toBeCloseTo(known.cpk.value, 4);
    const width = known.cpk.high - known.cpk.low;
    expect(Math.abs(found.ppk.low - known.cpk.low)).toBeLessThan(0.15 * width);
    expect(Math.abs(found.ppk.high - known.cpk.high)).toBeLessThan(0.15 * width);
    expect(Math.abs(found.pp!.low - known.cp!.low)).toBeLessThan(0.15 * width);
  });
  test('property: of 100 simulated Weibull samples of 60 the limits of 90 % hold the true index in about 90', () => {
    const truth = capabilityOfLaw();
    let held = 0;
    for (let i = 0; i < 100; i++) {
      const values = normals(120, 100 + i);
      // Half the square of two normals together is exponential; its root is Weibull of shape 2.
      const sample = Array.from({ length: 60 }, (_, j) =>
        Math.sqrt(0.5 * (values[2 * j]! * values[2 * j]! + values[2 * j + 1]! * values[2 * j + 1]!)),
      );
      const { ppk } = capabilityOfSample({
        ...{ values: sample, law: 'weibull', upper: 3, confidence: 0.9, seed: i, resampleCount: 200 },
      });
      if (ppk.low <= truth && ppk.high >= truth) held += 1;
    }
    expect(held).toBeGreaterThan(80);
    expect(held).toBeLessThan(98);
  });
  test('property: neither the order nor the unit of the values matters; the same seed gives the same limits', () => {
    const ask = { values: WEIBULL, law: 'weibull', lower: 5, upper: 120, resampleCount: 200 } as const;
    const plain = capabilityOfSample(ask);
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (unit) => {
        const values = [...WEIBULL].reverse().map((value) => unit * value);
        const found = capabilityOfSample({ ...ask, values, lower: 5 * unit, upper: 120 * unit });
        expect(found.ppk.value).toBeCloseTo(plain.ppk.value, 8);
        expect(found.ppk.low).toBeCloseTo(plain.ppk.low, 8);
      }),
      { numRuns: 10 },
    );
    expect(capabilityOfSample(ask)).toEqual(plain);
  });
  test('refuses: no limit, NaN, too few resamples, one value', () => {
    const ask = { values: WEIBULL, law: 'weibull', upper: 120 } as const;
    expect(() => capabilityOfSample({ values: WEIBULL, law: 'weibull' })).toThrow('out-of-range');
    expect(() => capabilityOfSample({ ...ask, values: [1, NaN, 3] })).toThrow('not-finite');
    expect(() => capabilityOfSample({ ...ask, resampleCount: 10 })).toThrow('out-of-range');
    expect(() => capabilityOfSample({ ...ask, values: [3] })).toThrow('out-of-range');
  });
});

/** Weibull of shape 2 and scale 1: quantile sqrt(-ln(1 - p)), by hand. */
function capabilityOfLaw(): number {
  const at = (above: number): number => Math.sqrt(-Math.log(above));
  return (3 - at(0.5)) / (at(0.00135) - at(0.5));
}
