import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chiSquareSurvival, gaussLegendre, noncentralStudentCdf, normalCdf, normalQuantile } from '#distributions';
import { exp } from '#elementary';
import {
  distributionFreeSampleSize,
  distributionFreeTolerance,
  howeToleranceFactor,
  natrellaToleranceFactor,
  oneSidedToleranceFactor,
  twoSidedToleranceFactor,
} from '#inference';

const input = fc.record({
  n: fc.integer({ min: 2, max: 300 }),
  content: fc.double({ min: 0.5, max: 0.999, noNaN: true }),
  confidence: fc.double({ min: 0.5, max: 0.99, noNaN: true }),
});

describe('oneSidedToleranceFactor', () => {
  test('property: the noncentral t law gives the confidence back', () => {
    fc.assert(
      fc.property(input, ({ n, content, confidence }) => {
        const k = oneSidedToleranceFactor({ n, content, confidence });
        const noncentrality = normalQuantile(content) * Math.sqrt(n);
        const got = noncentralStudentCdf({ x: k * Math.sqrt(n), degreesOfFreedom: n - 1, noncentrality });
        expect(Math.abs(got - confidence)).toBeLessThan(1e-9);
      }),
      { seed: 101, numRuns: 40 },
    );
  });

  test('limit: many values: the normal quantile', () => {
    expect(oneSidedToleranceFactor({ n: 1e6, content: 0.95, confidence: 0.95 })).toBeCloseTo(normalQuantile(0.95), 2);
  });

  test('golden: handbook value for 10 values, 95/95: 2.911 (ISO 16269-6, table C.2; NBS Handbook 91, table A-7)', () => {
    expect(oneSidedToleranceFactor({ n: 10, content: 0.95, confidence: 0.95 })).toBeCloseTo(2.911, 3);
  });
});

describe('twoSidedToleranceFactor', () => {
  /** The same integral by another rule and with the inner root by bisection. */
  function confidenceOf(k: number, { n, content }: { n: number; content: number }): number {
    const { nodes, weights } = gaussLegendre(80);
    return nodes.reduce((sum, node, i) => {
      const z = 4.5 * (node + 1);
      const x = z / Math.sqrt(n);
      let [low, high] = [0, x + 10];
      for (let step = 0; step < 60; step++) {
        const r = 0.5 * (low + high);
        if (normalCdf(x + r) - normalCdf(x - r) < content) low = r;
        else high = r;
      }
      const density = 2 * 0.3989422804014327 * exp(-0.5 * z * z);
      const chi = chiSquareSurvival({ x: ((n - 1) * low * low) / (k * k), degreesOfFreedom: n - 1 });
      return sum + 4.5 * weights[i]! * density * chi;
    }, 0);
  }

  test('property: another quadrature gives the confidence back', () => {
    fc.assert(
      fc.property(input, (one) => {
        const got = confidenceOf(twoSidedToleranceFactor(one), one);
        expect(Math.abs(got - one.confidence)).toBeLessThan(1e-8);
      }),
      { seed: 102, numRuns: 25 },
    );
  });

  test('property: wider for more content, more confidence, fewer values; above one-sided of the same content', () => {
    fc.assert(
      fc.property(input, ({ n, content, confidence }) => {
        const k = twoSidedToleranceFactor({ n, content, confidence });
        expect(twoSidedToleranceFactor({ n: n + 1, content, confidence })).toBeLessThan(k);
        expect(twoSidedToleranceFactor({ n, content: 0.5 * (content + 1), confidence })).toBeGreaterThan(k);
        expect(twoSidedToleranceFactor({ n, content, confidence: 0.5 * (confidence + 1) })).toBeGreaterThan(k);
        expect(oneSidedToleranceFactor({ n, content, confidence })).toBeLessThan(k);
      }),
      { seed: 103, numRuns: 25 },
    );
  });

  // ISO 16269-6:2014 and older tables, as quoted in the reference: 3.393, 2.555, 2.760, 5.077 (secondary).
  test.each([
    [10, 3.393],
    [30, 2.555],
    [20, 2.76],
    [5, 5.077],
  ])('golden: printed, n = %s, 95/95: %s', (n, k) => {
    const got = twoSidedToleranceFactor({ n, content: 0.95, confidence: 0.95 });
    expect(Math.abs(got - k)).toBeLessThan(5.01e-4);
  });

  test('limit: the pooled sd known exactly, mean from one value: r at 1.96 (k - 1.96 = z of one side)', () => {
    // As nu grows k solves P(|Z| <= x) = 0.95 with r(x) = k: Phi(x + k) - Phi(x - k) = 0.95 at x = 1.95996.
    const k = twoSidedToleranceFactor({ n: 1, content: 0.95, confidence: 0.95, degreesOfFreedom: 1e7 });
    const x = normalQuantile(0.975);
    expect(Math.abs(normalCdf(x + k) - normalCdf(x - k) - 0.95)).toBeLessThan(1e-4);
  });
});

describe('approximations', () => {
  test('property: Howe near the exact factor from 20 values on, Natrella too', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 1000 }), (n) => {
        const law = { n, content: 0.95, confidence: 0.95 };
        expect(Math.abs(howeToleranceFactor(law) / twoSidedToleranceFactor(law) - 1)).toBeLessThan(3e-3);
        expect(Math.abs(natrellaToleranceFactor(law) / oneSidedToleranceFactor(law) - 1)).toBeLessThan(0.01);
      }),
      { seed: 104, numRuns: 25 },
    );
  });

  test('refuses: Natrella where its formula has no value', () => {
    expect(() => natrellaToleranceFactor({ n: 2, content: 0.95, confidence: 0.99 })).toThrow('out-of-range');
  });
});

describe('distribution-free', () => {
  test('property: closed forms of Wilks, and the least number that reaches them', () => {
    fc.assert(
      fc.property(input, ({ n, content: p, confidence }) => {
        const found = distributionFreeTolerance({ n, content: p, confidence });
        const power = exp(Math.log(p) * n);
        expect(Math.abs(found.confidenceOneSided - (1 - power))).toBeLessThan(1e-12);
        expect(Math.abs(found.confidenceLeastToGreatest - (1 - (n * power) / p + (n - 1) * power))).toBeLessThan(1e-12);
        const needed = distributionFreeSampleSize({ content: p, confidence, blocksOutside: 2 });
        expect(n >= needed).toBe(found.blocksOutside >= 2);
      }),
      { seed: 105 },
    );
  });

  test('refuses: more values than can be counted', () => {
    expect(() => distributionFreeSampleSize({ content: 1 - 1e-12, confidence: 0.95 })).toThrow(/sampleSize/);
    expect(() => distributionFreeSampleSize({ content: 0.9, confidence: 0.9, blocksOutside: 0 })).toThrow(/blocks/);
    expect(() => distributionFreeTolerance({ n: 0, content: 0.9, confidence: 0.9 })).toThrow(/n=/);
  });
});

describe.each(
  Object.entries({ oneSidedToleranceFactor, twoSidedToleranceFactor, howeToleranceFactor, natrellaToleranceFactor }),
)('%s', (_, factor) => {
  test.each([NaN, 1, 2.5, 0])('refuses: n = %s', (n) => {
    expect(() => factor({ n, content: 0.9, confidence: 0.9 })).toThrow(/n=|degrees/);
  });
  test.each([NaN, 0, 1])('refuses: content or confidence = %s', (share) => {
    expect(() => factor({ n: 5, content: share, confidence: 0.9 })).toThrow(/content/);
    expect(() => factor({ n: 5, content: 0.9, confidence: share })).toThrow(/confidence/);
    expect(() => factor({ n: 5, content: 0.9, confidence: 0.9, degreesOfFreedom: NaN })).toThrow(/degrees/);
  });
});
