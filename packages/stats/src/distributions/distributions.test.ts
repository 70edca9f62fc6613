import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chiSquareCdf, chiSquareSurvival, normalCdf, normalQuantile, normalSurvival } from '#distributions';
import { exp } from '#elementary';

interface Case {
  readonly id: string;
  readonly inputs: {
    readonly dist: 'normal' | 'chi2';
    readonly fn: 'cdf' | 'quantile';
    readonly params: { readonly df?: number };
    readonly x?: number;
    readonly p?: number;
    readonly tail: 'lower' | 'upper';
  };
  readonly expected: { readonly value: number };
  readonly tolerance: { readonly abs?: number; readonly rel?: number };
}
interface TailCase {
  readonly id: string;
  readonly inputs: {
    readonly law: 'normal' | 'chi2';
    readonly x: number;
    readonly degreesOfFreedom?: number;
    readonly tail: 'lower' | 'upper';
  };
  readonly expected: { readonly value: number };
}
const read = (path: string): unknown => JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'));
const { cases } = read('../../golden/distributions.json') as { cases: Case[] };
const tails = read('../../golden/tails.json') as { cases: TailCase[] };
const casesOf = (dist: string, fn: string): Case[] =>
  cases.filter(({ inputs }) => inputs.dist === dist && inputs.fn === fn);

/** Pass rule of the golden files: |got - expected| <= max(abs, rel |expected|). */
const isClose = (got: number, { expected, tolerance }: Case): boolean =>
  Math.abs(got - expected.value) <= Math.max(tolerance.abs ?? 0, (tolerance.rel ?? 0) * Math.abs(expected.value));

describe('normalCdf and normalSurvival', () => {
  test.each(casesOf('normal', 'cdf'))('golden: $id', (entry) => {
    const { x, tail } = entry.inputs;
    expect(isClose(tail === 'lower' ? normalCdf(x!) : normalSurvival(x!), entry)).toBe(true);
  });

  test.each(tails.cases.filter(({ inputs }) => inputs.law === 'normal'))('golden: $id to 1e-15', (entry) => {
    const error = Math.abs(normalCdf(entry.inputs.x) / entry.expected.value - 1);
    expect(error).toBeLessThan(1e-15);
    expect(normalSurvival(-entry.inputs.x)).toBe(normalCdf(entry.inputs.x));
  });

  test('property: rises, and both tails make 1', () => {
    const z = fc.double({ min: -9, max: 9, noNaN: true });
    fc.assert(
      fc.property(z, z, (a, b) => {
        expect(normalCdf(Math.min(a, b))).toBeLessThanOrEqual(normalCdf(Math.max(a, b)) + 1e-16);
        expect(Math.abs(normalCdf(a) + normalSurvival(a) - 1)).toBeLessThan(3e-16);
      }),
      { seed: 31 },
    );
  });

  test('limit: 0, one half and 1', () => {
    expect([normalCdf(-Infinity), normalCdf(-50), normalCdf(0), normalCdf(50), normalCdf(Infinity)]).toEqual([
      0, 0, 0.5, 1, 1,
    ]);
  });

  test('refuses: NaN -> not-a-number', () => {
    expect(() => normalCdf(NaN)).toThrow('not-a-number');
    expect(() => normalSurvival(NaN)).toThrow('not-a-number');
  });
});

describe('normalQuantile', () => {
  test.each(casesOf('normal', 'quantile'))('golden: $id', (entry) => {
    const { p, tail } = entry.inputs;
    expect(isClose(tail === 'lower' ? normalQuantile(p!) : -normalQuantile(p!), entry)).toBe(true);
  });

  test('property: undoes the distribution function', () => {
    fc.assert(
      fc.property(fc.double({ min: -37, max: 5, noNaN: true }), (z) => {
        // Phi(z) has a rounding error of 1e-16; its slope carries it into z above 0.
        const allowed = 4e-15 * Math.max(1, Math.abs(z)) + (z > 0 ? 2e-16 / (exp(-0.5 * z * z) / 2.6) : 0);
        expect(Math.abs(normalQuantile(normalCdf(z)) - z)).toBeLessThan(allowed);
      }),
      { seed: 32 },
    );
  });

  test('limit: the smallest and the largest double inside', () => {
    expect(normalQuantile(5e-324)).toBeLessThan(-38);
    expect(normalQuantile(1 - 2.220446049250313e-16)).toBeGreaterThan(8);
  });

  test.each([NaN, 0, 1, -0.1, 1.1, Infinity])('refuses: p = %s', (p) => {
    expect(() => normalQuantile(p)).toThrow(/p=/);
  });
});

describe('chiSquareCdf and chiSquareSurvival', () => {
  const tailOf = (x: number, { params, tail }: Case['inputs']): number =>
    (tail === 'lower' ? chiSquareCdf : chiSquareSurvival)({ x, degreesOfFreedom: params.df! });

  test.each(casesOf('chi2', 'cdf'))('golden: $id', (entry) => {
    expect(isClose(tailOf(entry.inputs.x!, entry.inputs), entry)).toBe(true);
  });

  test.each(casesOf('chi2', 'quantile'))('golden: $id, the tail beyond the quantile', (entry) => {
    // The quantile is printed to 16 digits; x f(x)/P, at most about 60 here, carries that into the probability.
    expect(Math.abs(tailOf(entry.expected.value, entry.inputs) / entry.inputs.p! - 1)).toBeLessThan(1e-12);
  });

  test.each(tails.cases.filter(({ inputs }) => inputs.law === 'chi2'))('golden: $id to 2e-14', (entry) => {
    const { x, degreesOfFreedom = NaN, tail } = entry.inputs;
    const got = (tail === 'lower' ? chiSquareCdf : chiSquareSurvival)({ x, degreesOfFreedom });
    expect(Math.abs(got / entry.expected.value - 1)).toBeLessThan(2e-14);
  });

  test('property: rises with x, falls with the degrees of freedom', () => {
    const x = fc.double({ min: 0, max: 300, noNaN: true });
    fc.assert(
      fc.property(x, x, fc.integer({ min: 1, max: 300 }), (a, b, degreesOfFreedom) => {
        const low = chiSquareCdf({ x: Math.min(a, b), degreesOfFreedom });
        expect(chiSquareCdf({ x: Math.max(a, b), degreesOfFreedom })).toBeGreaterThanOrEqual(low * (1 - 1e-13));
        expect(chiSquareCdf({ x: a, degreesOfFreedom: degreesOfFreedom + 1 })).toBeLessThanOrEqual(
          chiSquareCdf({ x: a, degreesOfFreedom }) * (1 + 1e-13),
        );
      }),
      { seed: 33 },
    );
  });

  test('limit: at and below 0, and far out', () => {
    expect(chiSquareCdf({ x: 0, degreesOfFreedom: 9 })).toBe(0);
    expect(chiSquareSurvival({ x: -3, degreesOfFreedom: 9 })).toBe(1);
    expect(chiSquareCdf({ x: 1e9, degreesOfFreedom: 1000 })).toBe(1);
    expect(chiSquareSurvival({ x: 1e9, degreesOfFreedom: 1000 })).toBe(0);
  });

  test.each([NaN, 0, -1, 0.009, 2e9, Infinity])('refuses: degreesOfFreedom = %s', (degreesOfFreedom) => {
    expect(() => chiSquareCdf({ x: 1, degreesOfFreedom })).toThrow(/degreesOfFreedom/);
    expect(() => chiSquareSurvival({ x: 1, degreesOfFreedom })).toThrow(/degreesOfFreedom/);
  });

  test.each([NaN, Infinity, -Infinity])('refuses: x = %s', (x) => {
    expect(() => chiSquareCdf({ x, degreesOfFreedom: 3 })).toThrow('not-finite: x');
    expect(() => chiSquareSurvival({ x, degreesOfFreedom: 3 })).toThrow('not-finite: x');
  });
});
