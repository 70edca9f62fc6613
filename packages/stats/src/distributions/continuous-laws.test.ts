import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  betaCdf,
  betaQuantile,
  betaSurvival,
  chiSquareCdf,
  chiSquareQuantile,
  chiSquareSurvival,
  fisherCdf,
  fisherQuantile,
  fisherSurvival,
  gammaCdf,
  gammaQuantile,
  gammaSurvival,
  normalQuantile,
  studentCdf,
  studentQuantile,
  studentSurvival,
} from '#distributions';
import { exp, log, pow, sin } from '#elementary';
import { expMinusOne } from './exp-minus-one.ts';

type Tail = 'lower' | 'upper';
interface Law {
  readonly cdf: (x: number) => number;
  readonly survival: (x: number) => number;
  readonly quantile: (p: number, tail: Tail) => number;
}
const shape = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min: log(min), max: log(max), noNaN: true }).map(exp);
const degrees = shape(0.3, 1e6);

const LAWS: Record<string, fc.Arbitrary<Law>> = {
  student: degrees.map((degreesOfFreedom) => ({
    cdf: (x) => studentCdf({ x, degreesOfFreedom }),
    survival: (x) => studentSurvival({ x, degreesOfFreedom }),
    quantile: (p, tail) => studentQuantile({ p, degreesOfFreedom, tail }),
  })),
  chiSquare: degrees.map((degreesOfFreedom) => ({
    cdf: (x) => chiSquareCdf({ x, degreesOfFreedom }),
    survival: (x) => chiSquareSurvival({ x, degreesOfFreedom }),
    quantile: (p, tail) => chiSquareQuantile({ p, degreesOfFreedom, tail }),
  })),
  gamma: fc.tuple(degrees, shape(1e-3, 1e3)).map(([shape, scale]) => ({
    cdf: (x) => gammaCdf({ x, shape, scale }),
    survival: (x) => gammaSurvival({ x, shape, scale }),
    quantile: (p, tail) => gammaQuantile({ p, shape, scale, tail }),
  })),
  fisher: fc.tuple(degrees, degrees).map(([numeratorDf, denominatorDf]) => ({
    cdf: (x) => fisherCdf({ x, numeratorDf, denominatorDf }),
    survival: (x) => fisherSurvival({ x, numeratorDf, denominatorDf }),
    quantile: (p, tail) => fisherQuantile({ p, numeratorDf, denominatorDf, tail }),
  })),
  beta: fc.tuple(shape(0.3, 1e4), shape(0.3, 1e4)).map(([alpha, beta]) => ({
    cdf: (x) => betaCdf({ x, alpha, beta }),
    survival: (x) => betaSurvival({ x, alpha, beta }),
    quantile: (p, tail) => betaQuantile({ p, alpha, beta, tail }),
  })),
};
const lowP = fc.double({ min: log(1e-12), max: log(0.5), noNaN: true }).map(exp);

describe.each(Object.entries(LAWS))('%s', (name, laws) => {
  test('property: quantiles undo the lower and the upper tail', () => {
    fc.assert(
      fc.property(laws, lowP, (law, p) => {
        // The largest condition x f(x) / p here is about 1e4, for a million degrees of freedom.
        expect(Math.abs(law.cdf(law.quantile(p, 'lower')) / p - 1)).toBeLessThan(1e-9);
        const far = law.quantile(p, 'upper');
        // A beta quantile at 1 has lost what is left of it.
        if (name === 'beta' && far > 0.9) return;
        expect(Math.abs(law.survival(far) / p - 1)).toBeLessThan(1e-9);
      }),
      { seed: 41, numRuns: 300 },
    );
  });

  test('property: rises with x, quantiles rise with p, both tails make 1', () => {
    fc.assert(
      fc.property(laws, lowP, fc.double({ min: 1.01, max: 1.9, noNaN: true }), (law, p, factor) => {
        const [near, far] = [law.quantile(p, 'lower'), law.quantile(Math.min(0.9, p * factor), 'lower')];
        expect(near).toBeLessThanOrEqual(far);
        expect(law.cdf(near)).toBeLessThanOrEqual(law.cdf(far) * (1 + 1e-12));
        expect(Math.abs(law.cdf(far) + law.survival(far) - 1)).toBeLessThan(1e-14);
      }),
      { seed: 42, numRuns: 200 },
    );
  });

  test('property: p from one side is 1 - p from the other', () => {
    fc.assert(
      fc.property(laws, fc.integer({ min: 1, max: 63 }), (law, k) => {
        expect(law.quantile(k / 64, 'lower')).toBe(law.quantile(1 - k / 64, 'upper'));
      }),
      { seed: 43, numRuns: 100 },
    );
  });

  test.each([NaN, 0, 1, -0.1, 1.1, Infinity])('refuses: p = %s', (p) => {
    const [law] = fc.sample(laws, { numRuns: 1, seed: 1 });
    expect(() => law!.quantile(p, 'lower')).toThrow(/p=/);
    expect(() => law!.quantile(p, 'upper')).toThrow(/p=/);
  });

  test.each([NaN, Infinity, -Infinity])('refuses: x = %s', (x) => {
    const [law] = fc.sample(laws, { numRuns: 1, seed: 2 });
    expect(() => law!.cdf(x)).toThrow(/x=/);
    expect(() => law!.survival(x)).toThrow(/x=/);
  });
});

describe('student', () => {
  // Abramowitz, Stegun (1964), table 26.10, 3 decimals (from memory).
  test.each([
    [1, 0.975, 12.706],
    [2, 0.975, 4.303],
    [5, 0.975, 2.571],
    [10, 0.995, 3.169],
    [30, 0.975, 2.042],
    [120, 0.95, 1.658],
  ])('golden: printed table, %s degrees of freedom, p = %s', (degreesOfFreedom, p, t) => {
    expect(Math.abs(studentQuantile({ p, degreesOfFreedom }) - t)).toBeLessThan(5.01e-4);
  });

  test('property: 1 and 2 degrees of freedom in closed form', () => {
    // Cauchy: cot(pi p); two: (1 - 2p) / sqrt(2 p (1 - p)).
    for (const p of [1e-250, 1e-20, 1e-3, 0.1, 0.3, 0.49]) {
      const cauchy = sin(Math.PI * (0.5 - p)) / sin(Math.PI * p);
      expect(Math.abs(studentQuantile({ p, degreesOfFreedom: 1, tail: 'upper' }) / cauchy - 1)).toBeLessThan(1e-12);
      const two = (1 - 2 * p) / Math.sqrt(2 * p * (1 - p));
      expect(Math.abs(studentQuantile({ p, degreesOfFreedom: 2, tail: 'upper' }) / two - 1)).toBeLessThan(1e-12);
    }
  });

  test('limit: 0 at one half, the normal law at 1e9 degrees of freedom', () => {
    expect(studentQuantile({ p: 0.5, degreesOfFreedom: 3.3 })).toBe(0);
    expect(studentCdf({ x: 0, degreesOfFreedom: 3.3 })).toBe(0.5);
    expect(studentQuantile({ p: 0.025, degreesOfFreedom: 1e9 })).toBeCloseTo(normalQuantile(0.025), 7);
  });

  test('limit: the power law takes over without a step', () => {
    const degreesOfFreedom = 2.5;
    const edge = 1e8 * Math.sqrt(degreesOfFreedom);
    const ratio =
      studentSurvival({ x: edge * 1.001, degreesOfFreedom }) / studentSurvival({ x: edge * 0.999, degreesOfFreedom });
    expect(Math.abs(ratio / pow(0.999 / 1.001, degreesOfFreedom) - 1)).toBeLessThan(1e-12);
  });

  test.each([NaN, 0, -1, 0.009, 2e9])('refuses: degreesOfFreedom = %s', (degreesOfFreedom) => {
    expect(() => studentCdf({ x: 1, degreesOfFreedom })).toThrow(/degreesOfFreedom/);
    expect(() => studentQuantile({ p: 0.1, degreesOfFreedom })).toThrow(/degreesOfFreedom/);
  });

  test('refuses: a quantile beyond all numbers', () => {
    expect(() => studentQuantile({ p: 1e-300, degreesOfFreedom: 0.5 })).toThrow(/quantile/);
  });
});

describe('identities', () => {
  test('property: t squared is F with 1 and n', () => {
    fc.assert(
      fc.property(degrees, fc.double({ min: 0.01, max: 30, noNaN: true }), (n, x) => {
        const both = 2 * studentSurvival({ x, degreesOfFreedom: n });
        const ratio = fisherSurvival({ x: x * x, numeratorDf: 1, denominatorDf: n });
        // Below 1e-250 the square of x has lost what the comparison needs.
        if (both > 1e-250) expect(Math.abs(ratio / both - 1)).toBeLessThan(1e-10);
      }),
      { seed: 44 },
    );
  });

  test('property: whole chi-square sums agree with the gamma law, two algorithms', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), fc.double({ min: 0.2, max: 2.5, noNaN: true }), (n, share) => {
        const x = n * share;
        const [sum, series] = [chiSquareCdf({ x, degreesOfFreedom: n }), gammaCdf({ x: x / 2, shape: n / 2 })];
        const [far, fraction] = [
          chiSquareSurvival({ x, degreesOfFreedom: n }),
          gammaSurvival({ x: x / 2, shape: n / 2 }),
        ];
        if (sum > 1e-300) expect(Math.abs(series / sum - 1)).toBeLessThan(1e-12);
        if (far > 1e-300) expect(Math.abs(fraction / far - 1)).toBeLessThan(1e-12);
      }),
      { seed: 45, numRuns: 300 },
    );
  });

  test('property: closed forms: gamma of shape 1, beta with a shape of 1, F with 2 and 2', () => {
    for (const x of [1e-9, 0.1, 0.5, 0.9]) {
      expect(Math.abs(gammaCdf({ x, shape: 1 }) / -expMinusOne(-x) - 1)).toBeLessThan(1e-13);
      expect(Math.abs(betaCdf({ x, alpha: 3.5, beta: 1 }) / pow(x, 3.5) - 1)).toBeLessThan(1e-13);
      expect(Math.abs(betaSurvival({ x, alpha: 1, beta: 3.5 }) / pow(1 - x, 3.5) - 1)).toBeLessThan(1e-13);
      expect(Math.abs(fisherCdf({ x, numeratorDf: 2, denominatorDf: 2 }) / (x / (1 + x)) - 1)).toBeLessThan(1e-13);
    }
  });

  test('golden: chi-square 0.95 quantiles as printed, F 0.95 quantiles as printed', () => {
    // NIST/SEMATECH e-Handbook 1.3.6.7.4 and 1.3.6.7.3, 3 decimals (from memory).
    const chi = [3.841, 5.991, 7.815, 9.488, 11.07, 18.307, 43.773, 124.342];
    [1, 2, 3, 4, 5, 10, 30, 100].forEach((degreesOfFreedom, i) => {
      expect(Math.abs(chiSquareQuantile({ p: 0.95, degreesOfFreedom }) - chi[i]!)).toBeLessThan(5.01e-4);
    });
    const f = [161.448, 4.965, 3.708, 3.326];
    [
      [1, 1],
      [1, 10],
      [3, 10],
      [5, 10],
    ].forEach(([numeratorDf = 0, denominatorDf = 0], i) => {
      expect(Math.abs(fisherQuantile({ p: 0.05, numeratorDf, denominatorDf, tail: 'upper' }) - f[i]!)).toBeLessThan(
        5.01e-4,
      );
    });
  });
});

describe('edges', () => {
  test('limit: outside the range of the law', () => {
    expect([gammaCdf({ x: -1, shape: 2 }), gammaSurvival({ x: 0, shape: 2 })]).toEqual([0, 1]);
    expect([betaCdf({ x: -1, alpha: 2, beta: 3 }), betaCdf({ x: 2, alpha: 2, beta: 3 })]).toEqual([0, 1]);
    expect(fisherSurvival({ x: -1, numeratorDf: 2, denominatorDf: 3 })).toBe(1);
  });

  test('limit: a quantile below 1e-300 is 0, one above 1e300 is refused', () => {
    expect(chiSquareQuantile({ p: 1e-9, degreesOfFreedom: 0.02 })).toBe(0);
    expect(() => fisherQuantile({ p: 1e-200, numeratorDf: 1, denominatorDf: 1, tail: 'upper' })).toThrow('p=');
  });

  test.each([NaN, 0, -1, Infinity])('refuses: a parameter of %s', (bad) => {
    expect(() => gammaCdf({ x: 1, shape: bad })).toThrow(/shape/);
    expect(() => gammaCdf({ x: 1, shape: 1, scale: bad })).toThrow(/scale/);
    expect(() => gammaQuantile({ p: 0.5, shape: 1, scale: bad })).toThrow(/scale/);
    expect(() => betaCdf({ x: 0.5, alpha: bad, beta: 1 })).toThrow(/alpha/);
    expect(() => betaQuantile({ p: 0.5, alpha: 1, beta: bad })).toThrow(/beta/);
    expect(() => fisherCdf({ x: 1, numeratorDf: bad, denominatorDf: 1 })).toThrow(/numeratorDf/);
    expect(() => fisherQuantile({ p: 0.5, numeratorDf: 1, denominatorDf: bad })).toThrow(/denominatorDf/);
  });
});
