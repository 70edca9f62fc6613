import { describe, expect, test } from 'vitest';
import { boxBehnken } from './box-behnken.ts';
import { canonicalAnalysis } from './canonical-analysis.ts';
import { centralComposite } from './central-composite.ts';
import { codedLevels } from './coded-levels.ts';
import { designEfficiency } from './design-efficiency.ts';
import { dOptimal } from './d-optimal.ts';
import { factorSettings } from './factor-settings.ts';
import { fullFactorial } from './full-factorial.ts';
import { gridCandidates } from './grid-candidates.ts';
import { modelMatrix } from './model-matrix.ts';
import { modelTerms } from './model-terms.ts';
import { responseSurfaceFit } from './response-surface-fit.ts';
import { runOrder } from './run-order.ts';
import { runPlan } from './run-plan.ts';

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

describe('centralComposite', () => {
  // Box & Hunter: alpha = 1.414, 1.682, 2, 2.378; half fraction of five factors 2 (from memory).
  test.each([
    [2, undefined, 1.414],
    [3, undefined, 1.682],
    [4, undefined, 2],
    [5, undefined, 2.378],
    [5, ['E=ABCD'], 2],
  ])('golden: rotatable alpha of %s factors, corners by %j', (factorCount, generators, alpha) => {
    const design = centralComposite({
      factorCount,
      axial: 'rotatable',
      centreCount: 1,
      ...(generators && { generators }),
    });
    expect(design.alpha).toBeCloseTo(alpha, 3);
    expect(design.rows).toHaveLength(design.cornerCount + 2 * factorCount + 1);
  });
  test('property: rotatable means that the fourth moments are three times the mixed ones', () => {
    const { rows } = centralComposite({ factorCount: 3, axial: 'rotatable', centreCount: 4 });
    const fourth = sum(rows.map((row) => row[0]! ** 4));
    expect(fourth).toBeCloseTo(3 * sum(rows.map((row) => row[0]! ** 2 * row[1]! ** 2)), 10);
  });
  test('refuses: corners of resolution below 5, odd counts', () => {
    const task = { factorCount: 4, axial: 'rotatable', centreCount: 1 } as const;
    expect(() => centralComposite({ ...task, generators: ['D=ABC'] })).toThrow(/resolution=4/);
    expect(() => centralComposite({ ...task, centreCount: -1 })).toThrow(/centreCount/);
    expect(() => centralComposite({ ...task, factorCount: 1 })).toThrow(/factorCount/);
  });
});

describe('boxBehnken', () => {
  test.each([
    [3, 12],
    [4, 24],
    [5, 40],
    [6, 48],
    [7, 56],
  ])('golden: %s factors have %s runs besides the centre (Box & Behnken 1960)', (factorCount, runCount) => {
    expect(boxBehnken({ factorCount, centreCount: 3 })).toHaveLength(runCount + 3);
  });
  test.each([3, 4, 5, 6, 7])(
    'property: %s factors are treated alike, and every term can be estimated',
    (factorCount) => {
      const rows = boxBehnken({ factorCount, centreCount: 1 });
      const counts = Array.from({ length: factorCount }, (_, k) => rows.filter((row) => row[k] !== 0).length);
      expect(new Set(counts).size).toBe(1);
      expect(new Set(rows.map(String)).size).toBe(rows.length);
      expect(designEfficiency({ rows, model: 'quadratic' }).isEstimable).toBe(true);
    },
  );
  test.each([2, 8, NaN])('refuses: %s factors', (factorCount) => {
    expect(() => boxBehnken({ factorCount, centreCount: 1 })).toThrow(/factorCount/);
  });
});

describe('designEfficiency', () => {
  test('golden: an orthogonal two-level design has efficiency 1 for main effects', () => {
    const found = designEfficiency({ rows: fullFactorial({ factorCount: 3 }), model: 'interactions' });
    expect(found.dEfficiency).toBeCloseTo(1, 14);
    expect(found.logDeterminant).toBeCloseTo(7 * Math.log(8), 12);
  });
  test('limit: squares of a two-level design with centre points are aliased with one another, and named', () => {
    const rows = [...fullFactorial({ factorCount: 2 }), [0, 0]];
    const found = designEfficiency({ rows, model: 'quadratic' });
    expect(found).toMatchObject({ isEstimable: false, dependentTerms: ['x2^2'], dEfficiency: 0 });
  });
  test('refuses: nothing, NaN, unequal rows', () => {
    for (const rows of [[], [[NaN]], [[1, 2], [1]]])
      expect(() => designEfficiency({ rows, model: 'main-effects' })).toThrow(/out-of-range|not-finite|wrong-length/);
  });
});

describe('gridCandidates', () => {
  test('golden: 3 levels of 2 factors, by hand', () => {
    const grid = gridCandidates({ factorCount: 2, levelCount: 3 });
    expect(grid.slice(0, 4)).toEqual([
      [-1, -1],
      [0, -1],
      [1, -1],
      [-1, 0],
    ]);
    expect(grid).toHaveLength(9);
  });
  test('refuses: too many', () => {
    expect(() => gridCandidates({ factorCount: 8, levelCount: 4 })).toThrow(/candidateCount/);
  });
});

describe('dOptimal', () => {
  // For main effects with n a multiple of 4 an orthogonal array is D-optimal: det = n^p (Hadamard's bound).
  test.each([
    [3, 4],
    [5, 8],
    [7, 8],
  ])('golden: %s factors in %s runs reach the bound of Hadamard', (factorCount, runCount) => {
    const candidates = fullFactorial({ factorCount });
    const found = dOptimal({ candidates, model: 'main-effects', runCount });
    expect(found.dEfficiency).toBeCloseTo(1, 10);
  });
  test('property: exchange finds what enumeration proves, whatever the seed', () => {
    const candidates = gridCandidates({ factorCount: 2, levelCount: 3 });
    const proved = dOptimal({ candidates, model: 'quadratic', runCount: 9 });
    expect(proved.isProved).toBe(true);
    // Points off the region's edge that no optimal design uses make the list too long to enumerate.
    const idle = [-0.5, 0.5, -0.25, 0.25].flatMap((a) => [-0.5, 0.5, -0.25, 0.25].map((b) => [a, b]));
    for (const seed of [1, 2, 3]) {
      const found = dOptimal({ candidates: [...candidates, ...idle], model: 'quadratic', runCount: 9, seed });
      expect(found.isProved).toBe(false);
      expect(found.logDeterminant).toBeCloseTo(proved.logDeterminant, 10);
    }
  });
  test('refuses: fewer runs than terms, candidates that cannot tell the terms apart', () => {
    const candidates = fullFactorial({ factorCount: 2 });
    expect(() => dOptimal({ candidates, model: 'interactions', runCount: 3 })).toThrow(/runCount/);
    expect(() => dOptimal({ candidates, model: 'quadratic', runCount: 8 })).toThrow(/rank=/);
    expect(() => dOptimal({ candidates: [], model: 'main-effects', runCount: 4 })).toThrow(/factorCount/);
  });
});

describe('factorSettings', () => {
  test('golden: by hand, and back by codedLevels', () => {
    const range = { low: 200, high: 300 };
    expect(factorSettings({ range, coded: [-1, 0, 1, 1.5] })).toEqual([200, 250, 300, 325]);
    expect(codedLevels({ range, settings: [200, 250, 325] })).toEqual([-1, 0, 1.5]);
  });
  test.each([
    { low: 1, high: 1 },
    { low: 2, high: 1 },
    { low: NaN, high: 1 },
  ])('refuses: %j', (range) => {
    expect(() => factorSettings({ range, coded: [0] })).toThrow(/low|high/);
    expect(() => codedLevels({ range, settings: [0] })).toThrow(/low|high/);
  });
});

describe('runOrder', () => {
  test('property: every run once, the same for the same seed, blocks in their order', () => {
    const blocks = [1, 2, 1, 2, 1, 2, 1, 2];
    const order = runOrder({ runCount: 8, seed: 4, blocks });
    expect(order.toSorted((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(order.map((run) => blocks[run - 1])).toEqual([1, 1, 1, 1, 2, 2, 2, 2]);
    expect(runOrder({ runCount: 8, seed: 4, blocks })).toEqual(order);
    expect(runOrder({ runCount: 8, seed: 5, blocks })).not.toEqual(order);
  });
  test('property: every run is first about equally often', () => {
    const counts = [0, 0, 0, 0];
    for (let seed = 0; seed < 4000; seed++) counts[runOrder({ runCount: 4, seed })[0]! - 1]!++;
    // Four standard deviations of a count with p = 1/4.
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(4 * Math.sqrt(4000 * 0.25 * 0.75));
  });
  test('refuses: no run, as many blocks as not runs', () => {
    expect(() => runOrder({ runCount: 0, seed: 1 })).toThrow(/runCount/);
    expect(() => runOrder({ runCount: 3, seed: 1, blocks: [1] })).toThrow('wrong-length');
  });
});

describe('runPlan', () => {
  const rows = fullFactorial({ factorCount: 3 });
  const ranges = [
    { low: 2, high: 4 },
    { low: 100, high: 300 },
    { low: -1, high: 1 },
  ];
  test('golden: settings by hand; two blocks of four corners and two centre points each', () => {
    const plan = runPlan({ rows, ranges, seed: 7, blockWords: ['ABC'], centreCountPerBlock: 2 });
    expect(plan.map(({ block }) => block)).toEqual([...Array<number>(6).fill(1), ...Array<number>(6).fill(2)]);
    const first = plan.find(({ designRow }) => designRow === 2)!;
    expect(first.settings).toEqual([4, 100, -1]);
    expect(plan.filter(({ settings }) => String(settings) === '3,200,0')).toHaveLength(4);
    expect(plan.map(({ place }) => place)).toEqual(plan.map((_, i) => i + 1));
  });
  test('refuses: a range missing', () => {
    expect(() => runPlan({ rows, ranges: ranges.slice(1), seed: 1 })).toThrow('wrong-length');
  });
});

describe('modelTerms', () => {
  test('golden: full quadratic of two factors', () => {
    const names = modelTerms({ factorCount: 2, model: 'quadratic' }).map(({ name }) => name);
    expect(names).toEqual(['1', 'x1', 'x2', 'x1^2', 'x2^2', 'x1:x2']);
  });
});

describe('modelMatrix', () => {
  test('golden: by hand', () => {
    const terms = modelTerms({ factorCount: 2, model: 'quadratic' });
    expect(modelMatrix({ rows: [[2, -3]], terms })).toEqual([[1, 2, -3, 4, 9, -6]]);
  });
});

describe('canonicalAnalysis', () => {
  // By hand: y = 5 + 2 x1 - x1^2 - x2^2 - x1 x2 has its maximum at (4/3, -2/3), y = 19/3; B = [[-1, -1/2], [-1/2, -1]].
  test('golden: off the diagonal stands half of the product', () => {
    const found = canonicalAnalysis({ constant: 5, linear: [2, 0], squares: [-1, -1], products: [-1] });
    expect(found.nature).toBe('maximum');
    expect(found.stationaryPoint?.[0]).toBeCloseTo(4 / 3, 14);
    expect(found.stationaryPoint?.[1]).toBeCloseTo(-2 / 3, 14);
    expect(found.stationaryValue).toBeCloseTo(19 / 3, 14);
    expect(found.eigenvalues[0]).toBeCloseTo(-1.5, 14);
    expect(found.eigenvalues[1]).toBeCloseTo(-0.5, 14);
  });
  test('golden: three factors keep the products in the order 12, 13, 23', () => {
    const { eigenvalues } = canonicalAnalysis({
      constant: 0,
      linear: [0, 0, 0],
      squares: [1, 2, 3],
      products: [0, 0, 2],
    });
    // Eigenvalues of [[2, 1], [1, 3]]: (5 -+ sqrt 5) / 2, and 1 apart.
    expect(eigenvalues[0]).toBeCloseTo(1, 14);
    expect(eigenvalues[1]).toBeCloseTo((5 - Math.sqrt(5)) / 2, 13);
    expect(eigenvalues[2]).toBeCloseTo((5 + Math.sqrt(5)) / 2, 13);
  });
  test('limit: saddle, minimum, and a ridge without a point', () => {
    const at = (squares: readonly number[], products: readonly number[]) =>
      canonicalAnalysis({ constant: 1, linear: [1, 1], squares, products });
    expect(at([1, -1], [0]).nature).toBe('saddle');
    expect(at([1, 2], [0]).nature).toBe('minimum');
    expect(at([1, 1], [2])).toMatchObject({ nature: 'ridge' });
    expect(at([1, 1], [2]).stationaryPoint).toBeUndefined();
    expect(at([0, 0], [0]).nature).toBe('ridge');
  });
  test('refuses: NaN, products missing', () => {
    const surface = { constant: 1, linear: [1, 1], squares: [1, 1], products: [0] };
    expect(() => canonicalAnalysis({ ...surface, constant: NaN })).toThrow('not-finite');
    expect(() => canonicalAnalysis({ ...surface, products: [] })).toThrow('not-finite');
  });
});

describe('responseSurfaceFit', () => {
  test('property: an exact quadratic is found again, with nothing left over', () => {
    const { rows } = centralComposite({ factorCount: 2, axial: 'face-centred', centreCount: 3 });
    const values = rows.map(([a = 0, b = 0]) => 80 + a - 2 * b - 3 * a * a - b * b + 0.5 * a * b);
    const fit = responseSurfaceFit({ rows, values, model: 'quadratic' });
    const expected = [80, 1, -2, -3, -1, 0.5];
    for (const [k, { estimate }] of fit.terms.entries()) expect(estimate).toBeCloseTo(expected[k]!, 12);
    expect(fit.residualSumOfSquares).toBeLessThan(1e-24);
    expect(fit.canonical?.nature).toBe('maximum');
  });
  test('limit: a model that the runs cannot carry is told, not guessed', () => {
    const rows = [...fullFactorial({ factorCount: 2 }), [0, 0], [0, 0]];
    const fit = responseSurfaceFit({ rows, values: [1, 2, 3, 5, 3, 4], model: 'quadratic' });
    expect(fit.leftOut.map((k) => fit.names[k])).toEqual(['x2^2']);
    expect(fit.terms[4]).toEqual({});
    expect(fit.canonical).toBeUndefined();
  });
});
