import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convertedValue } from './converted-value.ts';

describe('convertedValue', () => {
  // SI prefixes and the litre (SI Brochure, 9th edition 2019, tables 7 and 8), by hand.
  test.each([
    [500, 'kg_per_m3', 'g_per_mL', 0.5],
    [0.43, 'g', 'mg', 430],
    [1.6, 'cm', 'mm', 16],
    [1600, 'kPa', 'MPa', 1.6],
    [0.0016, 'per_kPa', 'per_MPa', 1.6],
    [2.2, 'pct', 'frac', 0.022],
    [0.68, 'mL', 'mm3', 680],
    [6, 'kN_per_m', 'N_per_mm', 6],
  ])('golden: %s %s is %s -> %s', (...[value, from, to, expected]) => {
    expect(convertedValue({ value, from, to })).toBeCloseTo(expected, 12);
  });
  test.each([
    ['mg', 'mm'],
    ['mm3', 'mm'],
    ['min', 's'],
    ['kgf', 'N'],
    ['mg_per_mL', 'mg'],
    ['toString', 'mg'],
    ['', 'mg'],
  ])('refuses: %s into %s', (from, to) => {
    expect(convertedValue({ value: 1, from, to })).toBeUndefined();
  });
  test('property: there and back gives the value', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (value) => {
        const there = convertedValue({ value, from: 'g_per_mL', to: 'kg_per_m3' }) ?? NaN;
        expect(convertedValue({ value: there, from: 'kg_per_m3', to: 'g_per_mL' })).toBeCloseTo(value, 9);
      }),
      { seed: 1 },
    );
  });
});
