import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { log } from '#elementary';
import { choleskyDecomposition, choleskySolve } from '#numerics';
import { crossedComponents, lagOneAutocorrelation, nestedComponents, oneWayAnova, oneWayComponents } from './index.ts';
import { cellOf } from './cell-of.ts';
import { remlCriterion } from './reml-criterion.ts';

const apart = (got: number | undefined, expected: number): number => Math.abs((got ?? NaN) / expected - 1);
const dyestuff = [
  [1545, 1440, 1440, 1520, 1580],
  [1540, 1555, 1490, 1560, 1495],
  [1595, 1550, 1605, 1510, 1560],
  [1445, 1440, 1595, 1465, 1545],
  [1595, 1630, 1515, 1635, 1625],
  [1520, 1455, 1450, 1480, 1445],
];
const value = fc.integer({ min: -50, max: 50 });

describe('lagOneAutocorrelation', () => {
  // NIST StRD NumAcc1: r(1) = -0.5.
  test('golden: NumAcc1', () => {
    expect(lagOneAutocorrelation({ values: [10000001, 10000003, 10000002] })).toBeCloseTo(-0.5, 14);
  });
  test('refuses NaN, one value, equal values', () => {
    for (const values of [[1, NaN], [1], [2, 2, 2]]) expect(() => lagOneAutocorrelation({ values })).toThrow();
  });
});

describe('oneWayAnova', () => {
  // NIST StRD SmLs01 by rule: F = 21 exactly; a common part of 1e6 costs only what reading costs.
  test.each([
    [0, 1e-12],
    [1e6, 1e-9],
  ])('golden: SmLs with a common part of %d', (common, tolerance) => {
    const groups = [4, 3, 5, 3, 5, 3, 5, 3, 5].map((last) => {
      const pair = Array.from({ length: 10 }, () => [common + 1 + (last - 1) / 10, common + 1 + (last + 1) / 10]);
      return [common + 1 + last / 10, ...pair.flat()];
    });
    expect(apart(oneWayAnova({ groups }).f, 21)).toBeLessThan(tolerance);
  });
  test('refuses one group, one value each, NaN, no spread', () => {
    for (const groups of [
      [[1, 2]],
      [[1], [2]],
      [
        [1, NaN],
        [2, 3],
      ],
      [
        [1, 1],
        [2, 2],
      ],
      [[], [1, 2]],
    ])
      expect(() => oneWayAnova({ groups })).toThrow();
  });
});

describe('oneWayComponents', () => {
  // R lme4, Dyestuff: 1764.05, 2451.25, REML criterion 319.6543.
  test('golden: Dyestuff', () => {
    const found = oneWayComponents({ groups: dyestuff });
    expect(apart(found.between, 1764.05)).toBeLessThan(1e-12);
    expect(apart(found.reml.between, 1764.05)).toBeLessThan(1e-6);
    expect(apart(found.reml.within, 2451.25)).toBeLessThan(1e-6);
    expect(found.reml.criterion).toBeCloseTo(319.6543, 4);
    expect(found.reml.mean).toBeCloseTo(1527.5, 9);
  });
  test('property: groups of one size: REML is the ANOVA estimate where that is positive, 0 where it is not', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(value, { minLength: 3, maxLength: 3 }), { minLength: 3, maxLength: 6 }),
        (groups) => {
          fc.pre(groups.some((group) => new Set(group).size > 1));
          const { between, within, reml } = oneWayComponents({ groups });
          if (between > 0.01 * within) expect(apart(reml.between, between)).toBeLessThan(1e-4);
          if (between < 0) expect(reml.between).toBe(0);
        },
      ),
      { numRuns: 50 },
    );
  });
  test('unequal groups: no limits that only equal ones allow', () => {
    const found = oneWayComponents({
      groups: [
        [1, 2, 4],
        [2, 3],
        [5, 6],
      ],
    });
    expect(found).not.toHaveProperty('intraclassLow');
    expect(found).not.toHaveProperty('totalUpper');
  });
});

describe('remlCriterion', () => {
  test('identity: branch by branch as with a dense Cholesky decomposition', () => {
    const tree = [
      [
        [1, 2.5, 2],
        [4, 3],
      ],
      [[5], [2, 2.2, 6, 4]],
      [[7, 3]],
    ];
    const [group, place] = [0.7, 0.4];
    const found = remlCriterion(
      tree.map((places) => places.map(cellOf)),
      { group, place },
    );
    const rows = tree.flatMap((places, i) => places.flatMap((cell, j) => cell.map((y) => ({ i, j, y }))));
    const v = rows.map((a, r) =>
      rows.map((b, c) => (r === c ? 1 : 0) + (a.i === b.i ? group + (a.j === b.j ? place : 0) : 0)),
    );
    const decomposition = choleskyDecomposition(v);
    const ones = choleskySolve({ decomposition, values: rows.map(() => 1) });
    const information = ones.reduce((sum, one) => sum + one, 0);
    const mean = ones.reduce((sum, one, i) => sum + one * rows[i]!.y, 0) / information;
    const rest = rows.map(({ y }) => y - mean);
    const solved = choleskySolve({ decomposition, values: rest });
    const within = solved.reduce((sum, one, i) => sum + one * rest[i]!, 0) / (rows.length - 1);
    const criterion =
      (rows.length - 1) * (1 + log(2 * Math.PI * within)) + decomposition.logDeterminant + log(information);
    expect(found.criterion).toBeCloseTo(criterion, 10);
    expect(found.within).toBeCloseTo(within, 12);
    expect(found.mean).toBeCloseTo(mean, 12);
  });
});

describe('nestedComponents', () => {
  // By hand: two groups of two places of two values.
  test('golden: coefficients and sums of a small tree', () => {
    const found = nestedComponents({
      tree: [
        [
          [1, 3],
          [5, 7],
        ],
        [
          [10, 12],
          [16, 18],
        ],
      ],
    });
    expect(found.degreesOfFreedom).toEqual([1, 2, 4]);
    expect(found.coefficients).toEqual([2, 2, 4]);
    expect(found.sumsOfSquares).toEqual([200, 52, 8]);
    expect(found.components).toEqual([43.5, 12, 2]);
    expect(apart(found.reml.group, 43.5)).toBeLessThan(1e-5);
    expect(apart(found.reml.place, 12)).toBeLessThan(1e-5);
  });
  test('refuses trees with nothing to compare', () => {
    for (const tree of [
      [],
      [[[1, 2]]],
      [[[1], [2]], [[3]]],
      [[[1, 2]], [[3, 4]]],
      [[[1, NaN], [2]], [[3]]],
      [[[1, 2], [2]], []],
    ])
      expect(() => nestedComponents({ tree })).toThrow();
  });
});

describe('crossedComponents', () => {
  // By hand: means 2, 6 / 4, 12 about 6.
  test('golden: a table of two by two', () => {
    const found = crossedComponents({
      cells: [
        [
          [1, 3],
          [5, 7],
        ],
        [
          [3, 5],
          [11, 13],
        ],
      ],
    });
    expect(found.degreesOfFreedom).toEqual([1, 1, 1, 4]);
    expect(found.sumsOfSquares).toEqual([32, 72, 8, 8]);
    expect(found.components).toEqual([6, 16, 3, 2]);
    expect(found.f).toEqual([4, 9, 4]);
    expect(found.isReml).toBe(true);
  });
  test('refuses cells of unequal size', () => {
    expect(() =>
      crossedComponents({
        cells: [
          [
            [1, 2],
            [1, 3],
          ],
          [[1, 2], [1]],
        ],
      }),
    ).toThrow('wrong-length');
    expect(() => crossedComponents({ cells: [[[1, 2]]] })).toThrow('sample-size');
  });
});
