import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  acceptanceContour,
  acceptanceLimits,
  assuranceOfPlaces,
  assuranceOfSample,
  passingBound,
  probabilityOfPassingDosageUnits,
} from '#decisions';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('passingBound', () => {
  test('property: never above the exact probability, for any target', () => {
    fc.assert(
      fc.property(number(80, 125), number(0, 12), number(95, 115), (mean, sd, target) => {
        const { bound } = passingBound({ mean, sd, target });
        expect(bound).toBeLessThanOrEqual(probabilityOfPassingDosageUnits({ mean, sd, target }) + 1e-6);
      }),
      { seed: 61 },
    );
  });
  test('limit: without spread it passes or it does not', () => {
    expect(passingBound({ mean: 83.5, sd: 0 }).bound).toBe(1);
    expect(passingBound({ mean: 83.4, sd: 0 }).bound).toBe(0);
  });
  test.each([
    [{ mean: NaN, sd: 1 }, 'not-finite: mean'],
    [{ mean: 100, sd: NaN }, 'not-finite: sd'],
    [{ mean: 100, sd: -1 }, 'out-of-range: sd'],
    [{ mean: 100, sd: 1, target: 121 }, 'out-of-range: target'],
  ])('refuses: %o -> %s', (input, message) => {
    expect(() => passingBound(input)).toThrow(message);
  });
});

describe('assuranceOfSample', () => {
  test('golden: n = 10, mean 97, 90 % confidence: sd 2.63 assures 95 %', () => {
    // X. Lewis, M. Fan (2016), Stat. Biopharm. Res. 8(1), fig. 1: largest sd 2.63, printed to two places.
    const at = (sd: number): number => assuranceOfSample({ mean: 97, sd, n: 10, confidence: 0.9 }).lowerBound;
    expect(at(2.625)).toBeGreaterThan(0.95);
    expect(at(2.635)).toBeLessThan(0.95);
  });
  test('property: the corners are the least of the whole region, by the bound and by the exact probability', () => {
    const share = fc.record({ height: number(0, 1), side: number(-1, 1) });
    const sample = fc.record({
      ...{ mean: number(84, 116), sd: number(0, 6), n: fc.integer({ min: 5, max: 100 }) },
      confidence: number(0.5, 0.99),
    });
    fc.assert(
      fc.property(sample, share, (given, { height, side }) => {
        const { upperSd, highMean, lowerBound, exactProbability } = assuranceOfSample(given);
        const inside = { mean: given.mean + side * height * (highMean - given.mean), sd: height * upperSd };
        expect(passingBound(inside).bound).toBeGreaterThanOrEqual(lowerBound - 1e-8);
        expect(probabilityOfPassingDosageUnits(inside)).toBeGreaterThanOrEqual(exactProbability - 2e-6);
        expect(exactProbability).toBeGreaterThanOrEqual(lowerBound - 1e-6);
      }),
      { seed: 62, numRuns: 300 },
    );
  });
  test('property: more units, less spread or less confidence assure more', () => {
    fc.assert(
      fc.property(number(90, 110), number(0.5, 5), fc.integer({ min: 5, max: 60 }), (mean, sd, n) => {
        const of = (part: object): number => assuranceOfSample({ mean, sd, n, confidence: 0.9, ...part }).lowerBound;
        expect(of({ n: n + 5 })).toBeGreaterThanOrEqual(of({}) - 1e-8);
        expect(of({ sd: 0.9 * sd })).toBeGreaterThanOrEqual(of({}) - 1e-8);
        expect(of({ confidence: 0.8 })).toBeGreaterThanOrEqual(of({}) - 1e-8);
      }),
      { seed: 63 },
    );
  });
  test('limit: no spread is a region of one point', () => {
    const found = assuranceOfSample({ mean: 95, sd: 0, n: 10, confidence: 0.95 });
    expect(found).toMatchObject({ upperSd: 0, lowMean: 95, highMean: 95, lowerBound: 1, exactProbability: 1 });
    expect(assuranceOfSample({ mean: 80, sd: 3, n: 10, confidence: 0.95 }).lowerBound).toBe(0);
  });
  test.each([
    [{ n: 1 }, 'out-of-range: n'],
    [{ n: 10.5 }, 'not-whole: n'],
    [{ confidence: 1 }, 'out-of-range: confidence'],
    [{ confidence: NaN }, 'not-finite: confidence'],
    [{ mean: NaN }, 'not-finite: mean'],
    [{ sd: -1 }, 'out-of-range: sd'],
  ])('refuses: %o -> %s', (part, message) => {
    expect(() => assuranceOfSample({ mean: 100, sd: 3, n: 10, confidence: 0.95, ...part })).toThrow(message);
  });
});

describe('assuranceOfPlaces', () => {
  // Davies, Goldsmith (1972), table 6.1 (dyestuff yields): mean squares 11271.5 and 2451.25 (printed).
  const dyestuff = [
    [1545, 1440, 1440, 1520, 1580],
    [1540, 1555, 1490, 1560, 1495],
    [1595, 1550, 1605, 1510, 1560],
    [1445, 1440, 1595, 1465, 1545],
    [1595, 1630, 1515, 1635, 1625],
    [1520, 1455, 1450, 1480, 1445],
  ];
  test('golden: mean squares, total variance and its upper 95 % limit of the dyestuff yields', () => {
    // Limit 11936.016403958305: evaluation of Graybill and Wang's formula in R 4.2.2.
    const found = assuranceOfPlaces({ places: dyestuff, confidence: 0.95 * 0.95 });
    expect(found.meanSquareBetween).toBeCloseTo(11271.5, 8);
    expect(found.meanSquareWithin).toBeCloseTo(2451.25, 8);
    expect(found.totalSd * found.totalSd).toBeCloseTo(4215.3, 8);
    expect(found.upperSd * found.upperSd).toBeCloseTo(11936.016403958305, 6);
    expect(found).toMatchObject({ mean: 1527.5, lowerBound: 0, exactProbability: 0 });
  });
  test('property: neither the order of places nor that of units matters, and spread costs', () => {
    const place = fc.array(number(95, 105), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(fc.array(place, { minLength: 10, maxLength: 10 }), (places) => {
        const of = (list: readonly (readonly number[])[]): number =>
          assuranceOfPlaces({ places: list, confidence: 0.9 }).lowerBound;
        expect(of(places.toReversed().map((units) => units.toReversed()))).toBeCloseTo(of(places), 9);
        const calmer = places.map((units) => units.map((x) => 100 + 0.8 * (x - 100)));
        expect(of(calmer)).toBeGreaterThanOrEqual(of(places) - 1e-9);
      }),
      { seed: 64 },
    );
  });
  test.each([
    [[], 'sample-size'],
    [[[100, 101]], 'sample-size'],
    [[[100], [101]], 'sample-size'],
    [[[100, 101], [100]], 'wrong-length: unitCount=2 found=1'],
    [
      [
        [100, NaN],
        [100, 101],
      ],
      'not-finite: content',
    ],
  ])('refuses: %o -> %s', (places, message) => {
    expect(() => assuranceOfPlaces({ places, confidence: 0.95 })).toThrow(message);
  });
});

describe('acceptanceLimits', () => {
  const means = [86, 90, 95, 97, 98.5, 100, 101.5, 104, 110, 115];
  test.each(['bound', 'exact'] as const)('property: a sample at the limit assures the coverage: %s', (basis) => {
    for (const target of [100, 106]) {
      const contour = acceptanceContour({ coverage: 0.95, target, basis });
      for (const n of [10, 47])
        acceptanceLimits(contour, { n, confidence: 0.9, means }).forEach((sd, i) => {
          const found = assuranceOfSample({ mean: means[i]!, sd, n, confidence: 0.9, target });
          expect(Math.abs((basis === 'bound' ? found.lowerBound : found.exactProbability) - 0.95)).toBeLessThan(1e-5);
        });
    }
  });
  test.each([
    // Exact probability, 95/95, root by root in another program (design notes): to three places.
    [10, [1.12, 1.809, 2.498, 2.841]],
    [30, [1.676, 2.708, 3.739, 4.245]],
    [100, [2.071, 3.346, 4.618, 5.183]],
  ])('golden: n = %i at means 90, 94, 98, 100', (n, expected) => {
    const contour = acceptanceContour({ coverage: 0.95, basis: 'exact' });
    const found = acceptanceLimits(contour, { n, confidence: 0.95, means: [90, 94, 98, 100] });
    found.forEach((sd, i) => {
      expect(Math.abs(sd - expected[i]!)).toBeLessThan(0.0006);
    });
  });
  test('property: the exact limits are the wider ones, and never by much', () => {
    const [bound, exact] = (['bound', 'exact'] as const).map((basis) =>
      acceptanceLimits(acceptanceContour({ coverage: 0.95, basis }), { n: 20, confidence: 0.95, means }),
    );
    bound!.forEach((sd, i) => {
      expect(exact![i]).toBeGreaterThanOrEqual(sd - 1e-6);
      expect(exact![i]).toBeLessThan(1.05 * sd);
    });
  });
  test('limit: a mean that cannot pass has no limit', () => {
    const contour = acceptanceContour({ coverage: 0.95, basis: 'bound' });
    const edges = { n: 10, confidence: 0.95, means: [60, 83.5, 116.5, 140] };
    expect(acceptanceLimits(contour, edges)).toEqual([0, 0, 0, 0]);
    expect(acceptanceLimits(contour, { ...edges, means: [] })).toEqual([]);
  });
  test.each([
    [{ coverage: NaN }, 'not-finite: coverage'],
    [{ coverage: 0.4 }, 'out-of-range: coverage'],
    [{ coverage: 1 }, 'out-of-range: coverage'],
    [{ target: 0 }, 'out-of-range: target'],
  ])('refuses: a contour with %o -> %s', (part, message) => {
    expect(() => acceptanceContour({ coverage: 0.95, basis: 'bound', ...part })).toThrow(message);
  });
  test.each([
    [{ n: 1 }, 'out-of-range: n'],
    [{ means: [NaN] }, 'not-finite: mean'],
    [{ confidence: 0 }, 'out-of-range: confidence'],
  ])('refuses: a plan with %o -> %s', (part, message) => {
    const contour = acceptanceContour({ coverage: 0.95, basis: 'bound' });
    expect(() => acceptanceLimits(contour, { n: 10, confidence: 0.95, means, ...part })).toThrow(message);
  });
});
