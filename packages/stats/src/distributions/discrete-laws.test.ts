import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  binomialCdf,
  binomialPmf,
  binomialQuantile,
  binomialSurvival,
  hypergeometricCdf,
  hypergeometricPmf,
  hypergeometricQuantile,
  hypergeometricSurvival,
  poissonCdf,
  poissonPmf,
  poissonQuantile,
  poissonSurvival,
} from '#distributions';

interface Law {
  readonly pmf: (k: number) => number;
  readonly cdf: (k: number) => number;
  readonly survival: (k: number) => number;
  readonly quantile: (p: number, tail: 'lower' | 'upper') => number;
}
const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });

const LAWS: Record<string, fc.Arbitrary<Law>> = {
  binomial: fc.tuple(fc.integer({ min: 1, max: 400 }), share).map(([n, p]) => ({
    pmf: (k) => binomialPmf({ k, n, p }),
    cdf: (k) => binomialCdf({ k, n, p }),
    survival: (k) => binomialSurvival({ k, n, p }),
    quantile: (probability, tail) => binomialQuantile({ probability, n, p, tail }),
  })),
  poisson: fc.double({ min: 0.01, max: 200, noNaN: true }).map((mean) => ({
    pmf: (k) => poissonPmf({ k, mean }),
    cdf: (k) => poissonCdf({ k, mean }),
    survival: (k) => poissonSurvival({ k, mean }),
    quantile: (p, tail) => poissonQuantile({ p, mean, tail }),
  })),
  hypergeometric: fc.tuple(fc.integer({ min: 2, max: 500 }), share, share).map(([lotSize, bad, drawn]) => {
    const lot = { lotSize, defectiveCount: Math.round(bad * lotSize), sampleSize: Math.round(drawn * lotSize) };
    return {
      pmf: (k) => hypergeometricPmf({ k, ...lot }),
      cdf: (k) => hypergeometricCdf({ k, ...lot }),
      survival: (k) => hypergeometricSurvival({ k, ...lot }),
      quantile: (p, tail) => hypergeometricQuantile({ p, ...lot, tail }),
    };
  }),
};

describe.each(Object.entries(LAWS))('%s', (_, laws) => {
  test('property: the distribution function is the sum of the probabilities', () => {
    fc.assert(
      fc.property(laws, fc.integer({ min: 0, max: 300 }), (law, k) => {
        let sum = 0;
        for (let j = 0; j <= k; j++) sum += law.pmf(j);
        expect(Math.abs(law.cdf(k) - sum)).toBeLessThan(1e-12);
        expect(Math.abs(law.cdf(k) + law.survival(k) - 1)).toBeLessThan(1e-14);
      }),
      { seed: 51 },
    );
  });

  test('property: a quantile is the least count that reaches p', () => {
    fc.assert(
      fc.property(laws, fc.double({ min: 1e-9, max: 0.999999, noNaN: true }), (law, p) => {
        const low = law.quantile(p, 'lower');
        expect(law.cdf(low)).toBeGreaterThanOrEqual(p * (1 - 1e-12));
        expect(law.cdf(low - 1)).toBeLessThan(p);
        const high = law.quantile(p, 'upper');
        expect(law.survival(high)).toBeLessThanOrEqual(p * (1 + 1e-12));
        expect(law.survival(high - 1)).toBeGreaterThan(p);
      }),
      { seed: 52 },
    );
  });

  test('property: the quantile of a distribution function gives the count back', () => {
    fc.assert(
      fc.property(laws, fc.integer({ min: 0, max: 200 }), (law, k) => {
        const p = law.cdf(k);
        if (p < 1 && law.pmf(k) > 1e-6) expect(law.quantile(p, 'lower')).toBe(k);
      }),
      { seed: 53 },
    );
  });

  test.each([NaN, 0, 1, -0.1, Infinity])('refuses: p = %s', (p) => {
    const [law] = fc.sample(laws, { numRuns: 1, seed: 1 });
    expect(() => law!.quantile(p, 'lower')).toThrow(/(p|probability)=/);
  });

  test.each([NaN, 0.5, Infinity])('refuses: k = %s', (k) => {
    const [law] = fc.sample(laws, { numRuns: 1, seed: 1 });
    for (const of of [law!.pmf, law!.cdf, law!.survival]) expect(() => of(k)).toThrow(/k=/);
  });
});

describe('known numbers', () => {
  test('golden: ten throws of a coin, exact fractions', () => {
    const coin = { n: 10, p: 0.5 };
    [1, 10, 45, 120, 210, 252].forEach((ways, k) => {
      expect(Math.abs(binomialPmf({ k, ...coin }) * 1024 - ways)).toBeLessThan(1e-11);
    });
    expect(binomialQuantile({ probability: 0.5, n: 3, p: 0.5 })).toBe(1);
    expect(binomialQuantile({ probability: 0.5, n: 3, p: 0.5, tail: 'upper' })).toBe(1);
  });

  test('golden: lot of 1000 with 10 defectives, 258 drawn: at most 5 % without one (exact search, stats reference 8)', () => {
    const lot = { k: 0, lotSize: 1000, defectiveCount: 10 };
    expect(hypergeometricCdf({ ...lot, sampleSize: 258 })).toBeLessThanOrEqual(0.05);
    expect(hypergeometricCdf({ ...lot, sampleSize: 257 })).toBeGreaterThan(0.05);
  });

  test('property: sample and defectives may change places', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 60 }), fc.nat({ max: 60 }), (a, b, k) => {
        const one = hypergeometricSurvival({ k, lotSize: 60, defectiveCount: a, sampleSize: b });
        const other = hypergeometricSurvival({ k, lotSize: 60, defectiveCount: b, sampleSize: a });
        expect(Math.abs(one - other)).toBeLessThanOrEqual(1e-12 * one);
      }),
      { seed: 54 },
    );
  });

  test('limit: nothing and everything', () => {
    expect(binomialPmf({ k: 0, n: 0, p: 0.3 })).toBe(1);
    expect([binomialPmf({ k: 0, n: 5, p: 0 }), binomialPmf({ k: 5, n: 5, p: 1 })]).toEqual([1, 1]);
    expect([binomialPmf({ k: 1, n: 5, p: 0 }), binomialPmf({ k: 4, n: 5, p: 1 })]).toEqual([0, 0]);
    expect([binomialCdf({ k: -1, n: 5, p: 0.2 }), binomialCdf({ k: 5, n: 5, p: 0.2 })]).toEqual([0, 1]);
    expect([poissonPmf({ k: 0, mean: 0 }), poissonCdf({ k: 0, mean: 0 }), poissonPmf({ k: 3, mean: 0 })]).toEqual([
      1, 1, 0,
    ]);
    const all = { lotSize: 8, defectiveCount: 3, sampleSize: 8 };
    expect([hypergeometricPmf({ k: 3, ...all }), hypergeometricPmf({ k: 2, ...all })]).toEqual([1, 0]);
    expect(hypergeometricQuantile({ p: 0.5, ...all })).toBe(3);
  });

  test('limit: a billion units', () => {
    // Normal approximation with the third moment: within 1e-9 of 1/2 + 1 / (3 sqrt(2 pi n p q)) at the mean.
    const half = binomialCdf({ k: 5e8, n: 1e9, p: 0.5 });
    expect(Math.abs(half - 0.5 - 0.5 * binomialPmf({ k: 5e8, n: 1e9, p: 0.5 }))).toBeLessThan(1e-11);
  });

  test('refuses: impossible laws', () => {
    expect(() => binomialCdf({ k: 1, n: -1, p: 0.5 })).toThrow(/n=/);
    expect(() => binomialCdf({ k: 1, n: 2.5, p: 0.5 })).toThrow('not-whole');
    expect(() => binomialPmf({ k: 1, n: 2, p: 1.5 })).toThrow(/p=/);
    expect(() => poissonCdf({ k: 1, mean: -1 })).toThrow(/mean/);
    expect(() => poissonQuantile({ p: 0.5, mean: NaN })).toThrow(/mean/);
    expect(() => hypergeometricPmf({ k: 1, lotSize: 5, defectiveCount: 6, sampleSize: 1 })).toThrow(/defectiveCount/);
    expect(() => hypergeometricQuantile({ p: 0.5, lotSize: 5, defectiveCount: 2, sampleSize: 6 })).toThrow(
      /sampleSize/,
    );
  });
});
