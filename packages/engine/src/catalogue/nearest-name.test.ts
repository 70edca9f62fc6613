import { describe, expect, test } from 'vitest';
import { nearestName } from './nearest-name.ts';

const KNOWN = ['bulkDensity_g_per_mL', 'tappedDensity_g_per_mL', 'feedDensity_g_per_mL', 'size', 'verify'];

describe('nearestName', () => {
  test.each([
    ['bulkDensity', 'bulkDensity_g_per_mL'],
    ['bulkdensity_kg_per_m3', 'bulkDensity_g_per_mL'],
    ['bulkDenisty_g_per_mL', 'bulkDensity_g_per_mL'],
    ['taped_Density', undefined],
    ['tapedDensity_g_per_mL', 'tappedDensity_g_per_mL'],
    ['verfiy', 'verify'],
    ['sise', 'size'],
    ['zzzz', undefined],
  ])('golden: %s is nearest to %s (by hand)', (name, nearest) => {
    expect(nearestName(name, KNOWN)).toBe(nearest);
  });
});
