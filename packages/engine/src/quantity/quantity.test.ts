import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { singleMeasurement } from './repeatability.ts';
import { standardUncertainty } from './standard-uncertainty.ts';
import { kilogramForce_N } from './units.ts';

describe('standardUncertainty', () => {
  test('golden: GUM 4.4.3, 20 temperatures with sd 1.489 have a standard uncertainty of 0.333 (from memory)', () => {
    expect(standardUncertainty({ basis: 'measured', mean: 100.145, sd: 1.489, n: 20 })).toBeCloseTo(0.333, 3);
  });
  test('property: a guess is not narrowed by anything', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (sd) => {
        expect(standardUncertainty({ basis: 'guess', mean: 1, sd, halvedBy: 'tapped-density' })).toBe(sd);
      }),
      { seed: 1 },
    );
  });
  test.each([NaN, -1, Infinity])('refuses: sd = %s -> not-a-number', (sd) => {
    expect(() => standardUncertainty({ basis: 'measured', mean: 1, sd, n: 3 })).toThrow('not-a-number');
  });
  test('refuses: n = 0 -> not-a-number', () => {
    expect(() => standardUncertainty({ basis: 'measured', mean: 1, sd: 1, n: 0 })).toThrow('not-a-number');
  });
});

describe('singleMeasurement', () => {
  test('golden: densities 2 %, lengths 0.02 mm (common practice, no source)', () => {
    expect(singleMeasurement({ value: 0.5, kind: 'density' })).toMatchObject({ sd: 0.01, n: 1, sdAssumed: true });
    expect(singleMeasurement({ value: 15.5, kind: 'length' })).toMatchObject({ sd: 0.02 });
  });
});

describe('kilogramForce_N', () => {
  test('golden: 1 kgf = 9.80665 N (3rd CGPM 1901)', () => {
    expect(kilogramForce_N(1)).toBe(9.80665);
  });
});
