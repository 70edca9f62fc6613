import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arcTangent } from './arc-tangent.ts';
import { expressionGradient } from './expression-gradient.ts';
import { expressionModel } from './expression-model.ts';
import { levenbergMarquardt } from './levenberg-marquardt.ts';
import { nonlinearFit } from './nonlinear-fit.ts';
import { readExpression } from './read-expression.ts';

interface Dataset {
  readonly id: string;
  readonly formula: string;
  readonly start1: readonly number[];
  readonly start2: readonly number[];
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly parameters: readonly number[];
  readonly standardErrors?: readonly number[];
  readonly residualSumOfSquares: number;
}
const path = new URL('../../golden/nist-nonlinear.json', import.meta.url);
const { cases } = JSON.parse(readFileSync(path, 'utf8')) as { cases: Dataset[] };
const modelOf = ({ formula, start1, x }: Dataset) =>
  expressionModel({
    ...{ formula, parameters: start1.map((_, k) => `b${k + 1}`), variables: ['x'] },
    rows: x.map((value) => [value]),
  });
const apart = (got: number | undefined, expected: number): number => Math.abs((got ?? NaN) / expected - 1);
const valueOf = (formula: string, x = 0): number =>
  expressionGradient({ expression: readExpression(formula), parameters: [], variables: ['x'] })({
    ...{ parameters: [], variables: [x] },
  }).value;

describe('nonlinearFit', () => {
  // NIST StRD, certified to 11 digits.
  test.each(cases)('golden: $id from the second start of NIST, at least 9 digits', (dataset) => {
    const fit = nonlinearFit({ model: modelOf(dataset), responses: dataset.y, starts: [dataset.start2] });
    for (const [k, expected] of dataset.parameters.entries())
      expect(apart(fit.parameters?.[k]?.estimate, expected)).toBeLessThan(1e-9);
    for (const [k, expected] of dataset.standardErrors?.entries() ?? [])
      expect(apart(fit.parameters?.[k]?.standardError, expected)).toBeLessThan(1e-9);
    expect(apart(fit.residualSumOfSquares, dataset.residualSumOfSquares)).toBeLessThan(1e-9);
  });
  test.each(cases)('golden: $id from the first start: the certified result, or said not to converge', (dataset) => {
    const fit = nonlinearFit({ model: modelOf(dataset), responses: dataset.y, starts: [dataset.start1] });
    if (fit.isConverged) expect(apart(fit.residualSumOfSquares, dataset.residualSumOfSquares)).toBeLessThan(1e-9);
    else expect(fit.parameters).toBeUndefined();
  });
  test('golden: BoxBOD, which gets stuck from its first start, is found from starts drawn around it', () => {
    const dataset = cases.find(({ id }) => id === 'BoxBOD')!;
    const task = { model: modelOf(dataset), responses: dataset.y, starts: [dataset.start1] };
    expect(nonlinearFit(task).isConverged).toBe(false);
    const fit = nonlinearFit({ ...task, extraStartCount: 40, seed: 2 });
    expect(apart(fit.residualSumOfSquares, dataset.residualSumOfSquares)).toBeLessThan(1e-9);
    expect(fit.starts).toHaveLength(41);
  });

  test('property: a straight line is fitted as by linear regression, in one step, intervals by Student', () => {
    const rows = [0, 1, 2].map((x) => [x]);
    const model = expressionModel({ formula: 'a + b*x', parameters: ['a', 'b'], variables: ['x'], rows });
    const fit = nonlinearFit({ model, responses: [1, 3, 2], starts: [[10, -10]] });
    expect(fit.parameters?.[0]?.estimate).toBeCloseTo(1.5, 12);
    expect(fit.parameters?.[1]?.estimate).toBeCloseTo(0.5, 12);
    expect(fit.parameters?.[1]?.standardError).toBeCloseTo(Math.sqrt(0.75), 12);
    // t of 0.975 with 1 degree of freedom: tan(0.475 pi) = 12.7062.
    expect(fit.parameters?.[1]?.upper).toBeCloseTo(0.5 + Math.sqrt(0.75) * Math.tan(0.475 * Math.PI), 9);
  });

  test('limit: parameters that cannot be told apart are not fitted', () => {
    const model = expressionModel({
      ...{ formula: '(a + b)*x', parameters: ['a', 'b'], variables: ['x'] },
      rows: [[1], [2], [3]],
    });
    const fit = nonlinearFit({ model, responses: [1, 2, 4], starts: [[1, 1]] });
    expect(fit).toMatchObject({ isConverged: false, agreeingCount: 0 });
    expect(fit.starts[0]?.end).toBe('singular');
  });

  test('limit: a start without a value is said, the others count', () => {
    const model = expressionModel({ formula: 'ln(a)*x', parameters: ['a'], variables: ['x'], rows: [[1], [2]] });
    const fit = nonlinearFit({ model, responses: [1, 2], starts: [[-1], [2]] });
    expect(fit.starts.map(({ end }) => end)).toEqual(['not-finite-at-start', 'converged']);
    expect(fit.parameters?.[0]?.estimate).toBeCloseTo(Math.E, 10);
  });

  test.each([
    ['no start', [1, 2], []],
    ['fewer responses than parameters', [], [[1]]],
    ['NaN', [1, NaN], [[1]]],
    ['a start of NaN', [1, 2], [[NaN]]],
    ['starts of unequal length', [1, 2], [[1], [1, 2]]],
  ])('refuses: %s', (_name, responses, starts) => {
    const model = expressionModel({ formula: 'a*x', parameters: ['a'], variables: ['x'], rows: [[1], [2]] });
    expect(() => nonlinearFit({ model, responses, starts })).toThrow(/sample-size|not-finite|wrong-length/);
  });
});

describe('levenbergMarquardt', () => {
  // Rosenbrock's valley as residuals 10 (b2 - b1^2) and 1 - b1 from (-1.2, 1): least at (1, 1) with 0.
  test('golden: Rosenbrock', () => {
    const found = levenbergMarquardt({
      model: ([a = 0, b = 0]) => ({
        predicted: [-10 * (b - a * a), a],
        jacobian: [
          [20 * a, -10],
          [1, 0],
        ],
      }),
      ...{ responses: [0, 1], start: [-1.2, 1], mostRounds: 200 },
    });
    expect(found.end).toBe('converged');
    expect(found.parameters[0]).toBeCloseTo(1, 12);
    expect(found.parameters[1]).toBeCloseTo(1, 12);
  });
});

describe('readExpression', () => {
  test.each([
    ['1+2*3', 7],
    ['(1+2)*3', 9],
    ['2^3^2', 512],
    ['-2^2', -4],
    ['2**-1', 0.5],
    ['8/4/2', 1],
    ['2-3-4', -5],
    ['[1 + 2] * .5e1', 15],
    ['exp(0)+ln(1)+log(1)+log10(100)+sqrt(9)+sin(0)+cos(0)', 7],
    ['4*arctan(1)-pi', 0],
    ['x^2', 9],
    ['--x', 3],
  ])('golden: %s = %s at x = 3, by hand', (formula, expected) => {
    expect(valueOf(formula, 3)).toBeCloseTo(expected, 14);
  });
  test.each([
    ['', 0],
    ['1+', 2],
    ['(1', 2],
    ['(1]', 2],
    ['1 2', 1],
    ['exp', 3],
    ['x;y', 1],
    ['constructor.constructor', 11],
    ['a=1', 1],
    ['('.repeat(200), 50],
    ['1'.repeat(2001), 2000],
  ])('refuses: %.20s at character %s', (text, position) => {
    expect(() => readExpression(text)).toThrow(`not-readable: position=${position}`);
  });
});

describe('expressionGradient', () => {
  const point = fc.record({
    a: fc.double({ min: 0.3, max: 3, noNaN: true }),
    b: fc.double({ min: 0.3, max: 3, noNaN: true }),
  });
  test.each([
    'a*exp(-b*x)',
    'a/(1+b*x)^2',
    '(a+x)^b',
    'ln(a*b)-log10(a)+sqrt(b)',
    'sin(a*x)*cos(b)-arctan(a/b)',
    '-a^2/b',
  ])('property: slopes of %s are those of fourth-order differences', (formula) => {
    const of = expressionGradient({ expression: readExpression(formula), parameters: ['a', 'b'], variables: ['x'] });
    const at = (a: number, b: number) => of({ parameters: [a, b], variables: [0.7] });
    fc.assert(
      fc.property(point, ({ a, b }) => {
        const h = 1e-3;
        const slope = (f: (t: number) => number): number => (8 * (f(h) - f(-h)) - (f(2 * h) - f(-2 * h))) / (12 * h);
        const { slopes } = at(a, b);
        const byA = slope((t) => at(a + t, b).value);
        const byB = slope((t) => at(a, b + t).value);
        expect(Math.abs(slopes[0]! - byA)).toBeLessThan(1e-7 * (1 + Math.abs(byA)));
        expect(Math.abs(slopes[1]! - byB)).toBeLessThan(1e-7 * (1 + Math.abs(byB)));
      }),
      { seed: 9, numRuns: 30 },
    );
  });
  test('limit: 0 to a power has slope 0; names of objects are only names', () => {
    const of = expressionGradient({ expression: readExpression('x^b'), parameters: ['b'], variables: ['x'] });
    expect(of({ parameters: [2], variables: [0] })).toEqual({ value: 0, slopes: [0] });
  });
  test('refuses: a name that is neither parameter nor variable', () => {
    const expression = readExpression('a*toString');
    expect(() => expressionGradient({ expression, parameters: ['a'], variables: ['x'] })).toThrow('unknownNameCount=1');
  });
});

describe('expressionModel', () => {
  test('golden: values and slopes by hand', () => {
    const model = expressionModel({ formula: 'a*x + z', parameters: ['a'], variables: ['x', 'z'], rows: [[2, 5]] });
    expect(model([3])).toEqual({ predicted: [11], jacobian: [[2]] });
  });
  test('refuses: a row with a value missing or NaN', () => {
    const task = { formula: 'a*x', parameters: ['a'], variables: ['x'] };
    expect(() => expressionModel({ ...task, rows: [[]] })).toThrow('wrong-length');
    expect(() => expressionModel({ ...task, rows: [[NaN]] })).toThrow('not-finite');
  });
});

describe('arcTangent', () => {
  test('property: within a unit in the last place or two of the built-in function', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (x) => {
        expect(Math.abs(arcTangent(x) - Math.atan(x))).toBeLessThanOrEqual(1e-15 * Math.abs(Math.atan(x)));
      }),
      { seed: 8, numRuns: 1000 },
    );
  });
  test('limit: ends and NaN', () => {
    expect([arcTangent(Infinity), arcTangent(-Infinity), arcTangent(0)]).toEqual([Math.PI / 2, -Math.PI / 2, 0]);
    expect(arcTangent(NaN)).toBeNaN();
  });
});
