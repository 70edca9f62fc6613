import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chiSquareQuantile, fisherQuantile } from '#distributions';
import { fillNormals, seedStream } from '#random';
import { crossedComponents, crossedEffects, meanSquareLimits, nestedComponents, oneWayComponents } from './index.ts';

interface Twin {
  readonly id: string;
  readonly values: readonly number[];
  readonly factors: readonly { readonly name: string; readonly levels: readonly number[] }[];
  readonly variances: readonly number[];
  readonly within: number;
  readonly mean: number;
  readonly criterion: number;
  readonly effects: readonly (readonly number[])[];
  readonly standardErrors: readonly (readonly number[])[];
}
const path = new URL('../../golden/crossed-effects.json', import.meta.url);
const twins = JSON.parse(readFileSync(path, 'utf8')) as Twin[];

/** Dyestuff: O. L. Davies, P. L. Goldsmith (1972), table 6.1, as in R lme4. */
const DYESTUFF = [
  [1545, 1440, 1440, 1520, 1580],
  [1540, 1555, 1490, 1560, 1495],
  [1595, 1550, 1605, 1510, 1560],
  [1445, 1440, 1595, 1465, 1545],
  [1595, 1630, 1515, 1635, 1625],
  [1520, 1455, 1450, 1480, 1445],
];
const flat = DYESTUFF.flat();
const batch = DYESTUFF.flatMap((values, i) => values.map(() => i + 1));
const normals = (count: number, seed: number): Float64Array => {
  const target = new Float64Array(count);
  fillNormals(seedStream({ seed }), target);
  return target;
};
/** Six groups, twelve columns, so many strokes; an offset for one column. */
function revolution(strokes: number, odd_mg: number) {
  const noise = normals(strokes * 12, 11);
  const cells = Array.from({ length: strokes * 12 }, (_, i) => ({ stroke: Math.floor(i / 12), column: i % 12 }));
  return {
    values: cells.map(({ column }, i) => 430 + 7 * noise[i]! + (column === 3 ? odd_mg : 0)),
    factors: [
      { name: 'group', levels: cells.map(({ stroke }) => stroke % 6) },
      { name: 'column', levels: cells.map(({ column }) => column) },
      { name: 'carrier', levels: cells.map(({ stroke }) => stroke % 12) },
      { name: 'bore', levels: cells.map(({ column }) => column) },
    ],
  };
}

describe('crossedEffects', () => {
  test.each(twins)('golden: $id: dense likelihood and its gradient-free optimum, NumPy and SciPy', (twin) => {
    const found = crossedEffects(twin);
    expect(found.within / twin.within).toBeCloseTo(1, 5);
    expect(found.mean).toBeCloseTo(twin.mean, 5);
    expect(found.criterion).toBeCloseTo(twin.criterion, 6);
    for (const [k, { variance, levels }] of found.factors.entries()) {
      expect(Math.abs(variance - twin.variances[k]!)).toBeLessThan(1e-4 * (twin.within + twin.variances[k]!));
      for (const [j, level] of levels.entries()) {
        expect(level.effect).toBeCloseTo(twin.effects[k]![j]!, 3);
        expect(level.standardError).toBeCloseTo(twin.standardErrors[k]![j]!, 3);
      }
    }
  });
  test('golden: Dyestuff: 1764.05 and 2451.25 (R lme4)', () => {
    const found = crossedEffects({ values: flat, factors: [{ name: 'batch', levels: batch }] });
    expect(found.factors[0]!.variance).toBeCloseTo(1764.05, 2);
    expect(found.within).toBeCloseTo(2451.25, 2);
    // Balanced: every mean is drawn in by the same factor, n v / (n v + w).
    const [first] = found.factors[0]!.levels;
    expect(first!.effect / first!.raw).toBeCloseTo((5 * 1764.05) / (5 * 1764.05 + 2451.25), 6);
  });
  test('property: two algorithms, mixed-model equations and branch by branch, agree on nested and one-way data', () => {
    const one = oneWayComponents({ groups: DYESTUFF });
    const fit = crossedEffects({ values: flat, factors: [{ name: 'batch', levels: batch }] });
    expect(fit.criterion).toBeCloseTo(one.reml.criterion, 9);
    expect(fit.meanSe).toBeCloseTo(one.reml.meanSe, 6);
    const noise = normals(60, 5);
    const place = Array.from({ length: 60 }, (_, i) => Math.floor(i / 4));
    const group = place.map((p) => Math.floor(p / 3));
    const values = place.map((p, i) => noise[i]! + 2 * Math.sin(7 * p) + 3 * Math.cos(5 * group[i]!));
    const tree = Array.from({ length: 5 }, (_, g) =>
      Array.from({ length: 3 }, (_, p) => values.slice(12 * g + 4 * p, 12 * g + 4 * p + 4)),
    );
    const { reml } = nestedComponents({ tree });
    const factors = [
      { name: 'group', levels: group },
      { name: 'place', levels: place },
    ];
    const found = crossedEffects({ values, factors });
    expect(found.criterion).toBeCloseTo(reml.criterion, 6);
    expect(found.factors[0]!.variance).toBeCloseTo(reml.group, 4);
    expect(found.factors[1]!.variance).toBeCloseTo(reml.place, 4);
    expect(found.aliased).toEqual([{ name: 'group', by: 'place', kind: 'contained' }]);
  });
  test('golden: six groups on twelve carriers alias for ever, a column follows its bore; the odd column stands out', () => {
    const found = crossedEffects(revolution(24, -64.7));
    expect(found.aliased).toEqual([
      { name: 'group', by: 'carrier', kind: 'contained' },
      { name: 'bore', by: 'column', kind: 'same' },
    ]);
    const column = found.factors.find(({ name }) => name === 'column')!;
    expect(column.levels.filter(({ isOdd }) => isOdd).map(({ level }) => level)).toEqual([3]);
    expect(Math.abs(column.levels[3]!.effect)).toBeLessThan(Math.abs(column.levels[3]!.raw));
    expect(found.factors.map(({ name }) => name)).toEqual(['group', 'column', 'carrier']);
  });
  test('property: neither the order of values nor the unit matters; a common part changes the mean alone', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1000, noNaN: true }), fc.integer({ min: 1, max: 400 }), (unit, move) => {
        const { values, factors } = revolution(12, -40);
        const plain = crossedEffects({ values, factors });
        const order = values.map((_, i) => (i + move) % values.length);
        const moved = crossedEffects({
          values: order.map((i) => unit * (values[i]! + move)),
          factors: factors.map(({ name, levels }) => ({ name, levels: order.map((i) => levels[i]!) })),
        });
        expect(moved.mean / unit - move).toBeCloseTo(plain.mean, 6);
        expect(moved.within / unit / unit / plain.within).toBeCloseTo(1, 6);
        for (const [k, { levels }] of moved.factors.entries())
          for (const [j, { effect }] of levels.entries())
            expect(effect / unit).toBeCloseTo(plain.factors[k]!.levels[j]!.effect, 4);
      }),
      { numRuns: 10 },
    );
  });
  test('limit: no difference between places: the variance is 0 and every effect with it', () => {
    const values = [1, 3, 2, 2, 3, 1, 1, 3, 2, 2, 3, 1];
    const found = crossedEffects({ values, factors: [{ name: 'half', levels: values.map((_, i) => i % 2) }] });
    expect(found.factors[0]!.variance).toBe(0);
    expect(found.factors[0]!.levels.every(({ effect, isOdd }) => effect === 0 && !isOdd)).toBe(true);
  });
  test('refuses: too few, NaN, unequal lengths, one level only, a level for every value, no spread', () => {
    const ask = (values: number[], levels: number[]) => () =>
      crossedEffects({ values, factors: [{ name: 'column', levels }] });
    expect(ask([1, 2], [1, 2])).toThrow('sample-size');
    expect(ask([1, 2, NaN, 4], [1, 1, 2, 2])).toThrow('not-finite');
    expect(ask([1, 2, 3, 4], [1, 1, 2])).toThrow('wrong-length');
    expect(ask([1, 2, 3, 4], [1, 1, 1, 1])).toThrow('sample-size');
    expect(ask([1, 2, 3, 4], [1, 2, 3, 4])).toThrow('sample-size');
    expect(ask([5, 5, 5, 5], [1, 1, 2, 2])).toThrow('out-of-range');
    expect(() => crossedEffects({ values: [1, 2, 3], factors: [] })).toThrow('sample-size');
  });
});

describe('meanSquareLimits', () => {
  test('golden: one mean square: the exact interval by chi-square', () => {
    const found = meanSquareLimits({
      terms: [{ meanSquare: 4, degreesOfFreedom: 12, coefficient: 0.5 }],
      confidence: 0.9,
    });
    expect(found.low).toBeCloseTo((12 * 2) / chiSquareQuantile({ p: 0.95, degreesOfFreedom: 12 }), 12);
    expect(found.high).toBeCloseTo((12 * 2) / chiSquareQuantile({ p: 0.05, degreesOfFreedom: 12 }), 12);
  });
  test('golden: Dyestuff total, one-sided 95 %: as the upper limit of one unit at each place', () => {
    const found = oneWayComponents({ groups: DYESTUFF });
    const { high } = meanSquareLimits({
      terms: [
        { meanSquare: found.betweenMeanSquare, degreesOfFreedom: 5, coefficient: 0.2 },
        { meanSquare: found.withinMeanSquare, degreesOfFreedom: 24, coefficient: 0.8 },
      ],
      confidence: 0.9,
    });
    expect(high).toBeCloseTo(found.totalUpper!, 9);
  });
  test.each([
    [5, 24, 0.95],
    [1, 3, 0.9],
    [11, 11, 0.99],
  ])('property: with F at its critical point the limit of a difference is 0: %s and %s', (one, two, confidence) => {
    const [upper, lower] = [0.5 * (1 + confidence), 0.5 * (1 - confidence)].map((p) =>
      fisherQuantile({ p, numeratorDf: one, denominatorDf: two }),
    ) as [number, number];
    const at = (meanSquare: number) =>
      meanSquareLimits({
        terms: [
          { meanSquare, degreesOfFreedom: one, coefficient: 1 / 3 },
          { meanSquare: 7, degreesOfFreedom: two, coefficient: -1 / 3 },
        ],
        confidence,
      });
    expect(at(7 * upper * 1.001).low).toBeGreaterThan(0);
    expect(at(7 * upper * 0.999).low).toBe(0);
    expect(at(7 * lower * 1.001).high).toBeGreaterThan(0);
    expect(at(7 * lower * 0.999).high).toBe(0);
  });
  test('property: 2000 simulated balanced studies hold the true variance between groups in about 90 of 100', () => {
    const draws = normals(2000 * 40, 21);
    let held = 0;
    for (let study = 0; study < 2000; study++) {
      const at = study * 40;
      const groups = Array.from({ length: 8 }, (_, g) =>
        Array.from({ length: 4 }, (_, i) => 2 * draws[at + g]! + draws[at + 8 + 4 * g + i]!),
      );
      const { betweenLow, betweenHigh } = oneWayComponents({ groups, confidence: 0.9 });
      if (betweenLow! <= 4 && betweenHigh! >= 4) held += 1;
    }
    expect(held / 2000).toBeGreaterThan(0.88);
    expect(held / 2000).toBeLessThan(0.93);
  });
  test('property: sum and order: limits of more terms do not depend on their order', () => {
    const terms = [
      { meanSquare: 9, degreesOfFreedom: 4, coefficient: 0.25 },
      { meanSquare: 5, degreesOfFreedom: 7, coefficient: 0.5 },
      { meanSquare: 2, degreesOfFreedom: 20, coefficient: -0.75 },
      { meanSquare: 1, degreesOfFreedom: 30, coefficient: -0.1 },
    ];
    const one = meanSquareLimits({ terms, confidence: 0.95 });
    const two = meanSquareLimits({ terms: [...terms].reverse(), confidence: 0.95 });
    expect(two.low).toBeCloseTo(one.low, 12);
    expect(two.high).toBeCloseTo(one.high, 12);
    expect(one.low).toBeLessThan(one.estimate);
  });
  test('refuses: nothing, NaN, coefficient 0, confidence 1', () => {
    const term = { meanSquare: 4, degreesOfFreedom: 12, coefficient: 1 };
    expect(() => meanSquareLimits({ terms: [], confidence: 0.9 })).toThrow('sample-size');
    expect(() => meanSquareLimits({ terms: [{ ...term, meanSquare: NaN }], confidence: 0.9 })).toThrow('not-finite');
    expect(() => meanSquareLimits({ terms: [{ ...term, coefficient: 0 }], confidence: 0.9 })).toThrow('out-of-range');
    expect(() => meanSquareLimits({ terms: [term], confidence: 1 })).toThrow('out-of-range');
  });
});

describe('limits of components', () => {
  test('golden: a table of two by two by three: chi-square within cells, total from its mean squares', () => {
    const cells = [
      [
        [1, 2, 3],
        [2, 3, 4],
      ],
      [
        [3, 4, 6],
        [7, 8, 8],
      ],
    ];
    const found = crossedComponents({ cells });
    const [, , , within] = found.meanSquares;
    expect(found.low[3]).toBeCloseTo((8 * within) / chiSquareQuantile({ p: 0.975, degreesOfFreedom: 8 }), 9);
    expect(found.high[3]).toBeCloseTo((8 * within) / chiSquareQuantile({ p: 0.025, degreesOfFreedom: 8 }), 9);
    expect(found.total.estimate).toBeCloseTo(
      found.components.reduce((sum, one) => sum + one, 0),
      9,
    );
  });
});
