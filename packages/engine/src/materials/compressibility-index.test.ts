import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compressibilityIndex_pct } from './compressibility-index.ts';
import { hausnerFromIndex_ratio } from './hausner-from-index.ts';
import { hausner_ratio } from './hausner.ts';

/**
 * Getachew, Yilma, Abrha, "Acetylation and Evaluation of Taro Boloso-I Starch ..." (2020), doi 10.1155/2020/2708063,
 * table 3 (seen): means as printed. Densities are rounded to .0005, so the index is known to .15 % and the ratio to .005.
 */
const STARCHES = [
  { name: 'partially pregelatinised starch', bulk: 0.621, tapped: 0.726, index: 14.5, hausner: 1.17 },
  { name: 'native taro starch', bulk: 0.453, tapped: 0.59, index: 23.2, hausner: 1.3 },
  { name: 'taro starch, low substitution', bulk: 0.413, tapped: 0.529, index: 22.0, hausner: 1.28 },
  { name: 'taro starch, high substitution', bulk: 0.309, tapped: 0.383, index: 19.2, hausner: 1.24 },
];
const density = fc.double({ min: 0.05, max: 5, noNaN: true });
const densities = fc.tuple(density, density).map(([one, other]) => ({
  bulkDensity_g_per_mL: Math.min(one, other),
  tappedDensity_g_per_mL: Math.max(one, other),
}));

describe('compressibilityIndex_pct, hausner_ratio', () => {
  test.each(STARCHES)('golden: $name, table 3 of doi 10.1155/2020/2708063', ({ bulk, tapped, index, hausner }) => {
    const pair = { bulkDensity_g_per_mL: bulk, tappedDensity_g_per_mL: tapped };
    expect(Math.abs(compressibilityIndex_pct(pair) - index)).toBeLessThanOrEqual(0.15);
    expect(Math.abs(hausner_ratio(pair) - hausner)).toBeLessThanOrEqual(0.0075);
  });
  test('golden: .40 and .50 g/mL are 20 % and 1.25 (by hand)', () => {
    const pair = Object.freeze({ bulkDensity_g_per_mL: 0.4, tappedDensity_g_per_mL: 0.5 });
    expect(compressibilityIndex_pct(pair)).toBeCloseTo(20, 12);
    expect(hausner_ratio(pair)).toBe(1.25);
  });
  test('property: both indices say the same, and neither depends on the unit of density', () => {
    fc.assert(
      fc.property(densities, (pair) => {
        const index = compressibilityIndex_pct(pair);
        expect(index).toBeGreaterThanOrEqual(0);
        expect(index).toBeLessThan(100);
        const ratio = hausner_ratio(pair);
        expect(Math.abs(hausnerFromIndex_ratio(index) / ratio - 1)).toBeLessThan(1e-12);
        const scaled = {
          bulkDensity_g_per_mL: 8 * pair.bulkDensity_g_per_mL,
          tappedDensity_g_per_mL: 8 * pair.tappedDensity_g_per_mL,
        };
        expect(compressibilityIndex_pct(scaled)).toBe(index);
      }),
      { seed: 1 },
    );
  });
  test('limit: a powder that does not settle has 0 % and 1', () => {
    const pair = { bulkDensity_g_per_mL: 0.5, tappedDensity_g_per_mL: 0.5 };
    expect(compressibilityIndex_pct(pair)).toBe(0);
    expect(hausner_ratio(pair)).toBe(1);
  });
  test.each([
    [0, 0.5, 'not-positive'],
    [-0.4, 0.5, 'not-positive'],
    [0.4, 0, 'not-positive'],
    [NaN, 0.5, 'not-a-number'],
    [0.4, NaN, 'not-a-number'],
    [0.4, Infinity, 'not-a-number'],
    [0.5, 0.4, 'tapped-below-bulk'],
  ])('refuses: poured %s and tapped %s g/mL -> %s', (bulkDensity_g_per_mL, tappedDensity_g_per_mL, code) => {
    const pair = { bulkDensity_g_per_mL, tappedDensity_g_per_mL };
    expect(() => compressibilityIndex_pct(pair)).toThrow(code);
    expect(() => hausner_ratio(pair)).toThrow(code);
  });
});

describe('hausnerFromIndex_ratio', () => {
  test.each([
    [10, 1.11],
    [15, 1.18],
    [20, 1.25],
    [31, 1.45],
    [37, 1.59],
  ])('golden: index %s %% ends the band at a ratio of %s, to .008 (USP <1174>)', (index, printed) => {
    expect(Math.abs(hausnerFromIndex_ratio(index) - printed)).toBeLessThanOrEqual(0.008);
  });
  test('golden: 25 % is 1.333, though the printed band ends at 1.34 (by hand: 1 / .75)', () => {
    expect(hausnerFromIndex_ratio(25)).toBeCloseTo(4 / 3, 12);
  });
  test.each([
    [NaN, 'not-a-number'],
    [-0.1, 'out-of-range'],
    [100, 'out-of-range'],
  ])('refuses: an index of %s %% -> %s', (index, code) => {
    expect(() => hausnerFromIndex_ratio(index)).toThrow(code);
  });
});
