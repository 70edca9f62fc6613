import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chartConstants, individualsLimits, meanAndRangeLimits, meanAndSdLimits, rangeSurvival } from '#charts';
import { normalCdf, normalSurvival, studentizedRangeSurvival } from '#distributions';

const value = fc.double({ min: 300, max: 400, noNaN: true });
const equal = fc
  .integer({ min: 2, max: 8 })
  .chain((n) => fc.array(fc.array(value, { minLength: n, maxLength: n }), { minLength: 2, maxLength: 12 }));

describe('rangeSurvival', () => {
  test.each([0.5, 2, 5, 9])('golden: two values, range %s: closed form 2 P(Z > r / sqrt 2)', (range) => {
    const exact = 2 * normalSurvival(range / Math.SQRT2);
    expect(Math.abs(rangeSurvival({ range, count: 2 }) / exact - 1)).toBeLessThan(1e-9);
  });
  test.each([3, 5, 10, 20])(
    'property: agrees with the studentised range of %s at very many degrees of freedom',
    (count) => {
      for (const range of [1, 3, 5]) {
        const other = studentizedRangeSurvival({ x: range, groupCount: count, degreesOfFreedom: 1e9 });
        expect(Math.abs(rangeSurvival({ range, count }) - other)).toBeLessThan(1e-7);
      }
    },
  );
  test('limit: 1 up to 0, rises with the number of values', () => {
    expect(rangeSurvival({ range: 0, count: 5 })).toBe(1);
    for (let count = 2; count < 40; count++)
      expect(rangeSurvival({ range: 4, count })).toBeLessThan(rangeSurvival({ range: 4, count: count + 1 }));
  });
  test.each([1, 2.5, NaN, 1001])('refuses: count %s', (count) => {
    expect(() => rangeSurvival({ range: 1, count })).toThrow();
  });
});

describe('chartConstants', () => {
  test('golden: n = 2 and 3 in closed form', () => {
    // d2 = 2 / sqrt pi and 3 / sqrt pi; d3^2 = 2 - 4/pi for n = 2; c4 = sqrt(2/pi) and sqrt(pi)/2.
    const [two, three] = [chartConstants({ n: 2 }), chartConstants({ n: 3 })];
    expect(two.d2).toBeCloseTo(2 / Math.sqrt(Math.PI), 12);
    expect(three.d2).toBeCloseTo(3 / Math.sqrt(Math.PI), 12);
    expect(two.d3).toBeCloseTo(Math.sqrt(2 - 4 / Math.PI), 11);
    expect(two.c4).toBeCloseTo(Math.sqrt(2 / Math.PI), 14);
    expect(three.c4).toBeCloseTo(Math.sqrt(Math.PI) / 2, 14);
  });
  // ASTM STP 15D, table of factors, three decimals (from memory).
  test.each([
    [4, { A2: 0.729, D4: 2.282, A3: 1.628, B4: 2.266, d2: 2.059 }],
    [5, { A2: 0.577, D4: 2.114, A3: 1.427, B4: 2.089, d2: 2.326 }],
    [10, { A2: 0.308, D3: 0.223, D4: 1.777, A3: 0.975, B3: 0.284, d2: 3.078 }],
    [25, { A2: 0.153, D3: 0.459, D4: 1.541, B3: 0.565, B4: 1.435, d2: 3.931 }],
  ] as const)('golden: printed factors of n = %s', (n, printed) => {
    const found = chartConstants({ n });
    for (const [name, factor] of Object.entries(printed))
      expect(Math.abs(found[name as keyof typeof found] - factor)).toBeLessThan(6e-4);
  });
  test.each([7, 100, 1000])('property: d2 of %s agrees with int 1 - Phi^n - (1 - Phi)^n', (n) => {
    let sum = 0;
    for (let x = -9; x <= 9; x += 0.01) sum += 0.01 * (1 - normalCdf(x) ** n - normalSurvival(x) ** n);
    expect(Math.abs(chartConstants({ n }).d2 - sum)).toBeLessThan(1e-8);
  });
  test.each([1, 2.5, NaN, Infinity])('refuses: n = %s', (n) => {
    expect(() => chartConstants({ n })).toThrow();
  });
});

describe('meanAndRangeLimits and meanAndSdLimits', () => {
  test('property: moving the data moves the limits, stretching stretches them', () => {
    fc.assert(
      fc.property(equal, (subgroups) => {
        const moved = subgroups.map((values) => values.map((x) => 2 * x + 7));
        const [plain, other] = [meanAndRangeLimits({ subgroups }), meanAndRangeLimits({ subgroups: moved })];
        expect(other.means.upper).toBeCloseTo(2 * plain.means.upper + 7, 7);
        expect(other.ranges.upper).toBeCloseTo(2 * plain.ranges.upper, 7);
        const [sds, otherSds] = [meanAndSdLimits({ subgroups }), meanAndSdLimits({ subgroups: moved })];
        expect(otherSds.perSubgroup[0]!.means.lower).toBeCloseTo(2 * sds.perSubgroup[0]!.means.lower + 7, 7);
      }),
      { seed: 5 },
    );
  });
  test('property: with equal sizes sigma is the mean sd over c4, and two values give the same by range and sd', () => {
    fc.assert(
      fc.property(equal, (subgroups) => {
        const { sigma, meanSd } = meanAndSdLimits({ subgroups });
        expect(sigma).toBeCloseTo(meanSd / chartConstants({ n: subgroups[0]!.length }).c4, 8);
        const pairs = subgroups.map((values) => values.slice(0, 2));
        expect(meanAndSdLimits({ subgroups: pairs }).sigma).toBeCloseTo(
          meanAndRangeLimits({ subgroups: pairs }).sigma,
          8,
        );
      }),
      { seed: 6 },
    );
  });
  test('golden: unequal sizes by hand: the larger subgroup has the narrower limits for its mean', () => {
    const subgroups = [
      [10, 12],
      [11, 13, 15],
    ];
    // s = sqrt 2 and 2; c4^2 = 2/pi and pi/4; h = 0.6366/0.3634 and 0.7854/0.2146.
    const [h2, h3] = [2 / Math.PI / (1 - 2 / Math.PI), Math.PI / 4 / (1 - Math.PI / 4)];
    const sigma = (h2 * Math.sqrt(Math.PI) + (h3 * 4) / Math.sqrt(Math.PI)) / (h2 + h3);
    const found = meanAndSdLimits({ subgroups });
    expect(found.sigma).toBeCloseTo(sigma, 12);
    expect(found.grandMean).toBeCloseTo(12.2, 12);
    expect(found.perSubgroup[0]!.means.upper).toBeCloseTo(12.2 + (3 * sigma) / Math.SQRT2, 12);
    expect(found.perSubgroup[1]!.means.upper).toBeCloseTo(12.2 + (3 * sigma) / Math.sqrt(3), 12);
    expect(found.pooledSd).toBeCloseTo(Math.sqrt((2 + 8) / 3), 12);
    expect(() => meanAndRangeLimits({ subgroups })).toThrow(/wrong-length/);
  });
  test('limit: all values equal: all limits on the centre', () => {
    const subgroups = [
      [5, 5, 5],
      [5, 5, 5],
    ];
    expect(meanAndRangeLimits({ subgroups }).means).toEqual({ centre: 5, lower: 5, upper: 5 });
    expect(meanAndSdLimits({ subgroups }).perSubgroup[0]!.sds.upper).toBe(0);
  });
  test.each([
    [[]],
    [[[1, 2]]],
    [[[1, 2], [3]]],
    [[[1, 2], []]],
    [
      [
        [1, 2],
        [3, NaN],
      ],
    ],
    [
      [
        [1, Infinity],
        [3, 4],
      ],
    ],
  ])('refuses: %j', (subgroups) => {
    expect(() => meanAndRangeLimits({ subgroups })).toThrow();
    expect(() => meanAndSdLimits({ subgroups })).toThrow();
  });
});

describe('individualsLimits', () => {
  test('golden: NIST/SEMATECH e-Handbook 6.3.2.2, flow rate, printed with d2 = 1.128', () => {
    const found = individualsLimits({ values: [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1] });
    expect(found.mean).toBeCloseTo(50.81, 10);
    expect(found.meanMovingRange).toBeCloseTo(1.8778, 4);
    expect(Math.abs(found.individuals.upper - 55.8041)).toBeLessThan(2e-3);
    expect(Math.abs(found.individuals.lower - 45.8159)).toBeLessThan(2e-3);
  });
  test.each([[[]], [[1, 2]], [[1, 2, NaN]]])('refuses: %j', (values) => {
    expect(() => individualsLimits({ values })).toThrow();
  });
});
