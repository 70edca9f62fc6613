import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { massOfVolume_mg } from './mass-of-volume.ts';
import { mixtureDensity_g_per_mL } from './mixture-density.ts';

describe('mixtureDensity_g_per_mL', () => {
  test('golden: 30 % of .5 and 70 % of .8 g/mL: 1 / (.6 + .875) = .677966 (by hand)', () => {
    const mixture = Object.freeze({ massShares_frac: [0.3, 0.7], densities_g_per_mL: [0.5, 0.8] });
    expect(mixtureDensity_g_per_mL(mixture)).toBeCloseTo(0.6779661, 7);
  });
  test('property: between the least and the greatest density, whatever the order', () => {
    const part = fc.tuple(fc.double({ min: 0.01, max: 1, noNaN: true }), fc.double({ min: 0.1, max: 5, noNaN: true }));
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 8 }), (parts) => {
        const total = parts.reduce((sum, [weight]) => sum + weight, 0);
        const massShares_frac = parts.map(([weight]) => weight / total);
        const densities_g_per_mL = parts.map(([, density]) => density);
        const mixed = mixtureDensity_g_per_mL({ massShares_frac, densities_g_per_mL });
        expect(mixed).toBeGreaterThanOrEqual(Math.min(...densities_g_per_mL) * (1 - 1e-12));
        expect(mixed).toBeLessThanOrEqual(Math.max(...densities_g_per_mL) * (1 + 1e-12));
        const turned = {
          massShares_frac: massShares_frac.toReversed(),
          densities_g_per_mL: densities_g_per_mL.toReversed(),
        };
        expect(mixtureDensity_g_per_mL(turned)).toBeCloseTo(mixed, 12);
      }),
      { seed: 1 },
    );
  });
  test('limit: one part keeps its density, a share of 0 changes nothing', () => {
    expect(mixtureDensity_g_per_mL({ massShares_frac: [1], densities_g_per_mL: [0.64] })).toBe(0.64);
    expect(mixtureDensity_g_per_mL({ massShares_frac: [0, 1], densities_g_per_mL: [3, 0.64] })).toBe(0.64);
  });
  test('limit: shares may miss 1 by the rounding of typed figures, 1e-6, not by more', () => {
    const densities_g_per_mL = [0.5, 0.8, 1.2];
    expect(
      mixtureDensity_g_per_mL({ massShares_frac: [0.333333, 0.333333, 0.333333], densities_g_per_mL }),
    ).toBeGreaterThan(0.5);
    expect(() => mixtureDensity_g_per_mL({ massShares_frac: [0.3333, 0.3333, 0.3333], densities_g_per_mL })).toThrow(
      'mass-shares-not-one',
    );
  });
  test.each([
    [[], [], 'unlike-lengths'],
    [[1], [0.5, 0.8], 'unlike-lengths'],
    [[0.5, 0.6], [0.5, 0.8], 'mass-shares-not-one'],
    [[0.5, NaN], [0.5, 0.8], 'not-a-number'],
    [[1.5, -0.5], [0.5, 0.8], 'out-of-range'],
    [[0.5, 0.5], [0.5, 0], 'not-positive'],
  ])('refuses: shares %j of densities %j -> %s', (massShares_frac, densities_g_per_mL, code) => {
    expect(() => mixtureDensity_g_per_mL({ massShares_frac, densities_g_per_mL })).toThrow(code);
  });
});

describe('massOfVolume_mg', () => {
  test.each([
    [1.37, 1340],
    [0.68, 665],
    [0.37, 362],
  ])(
    'golden: %s mL of lactose filled by hand, .978 g/mL, hold %s mg to .4 % or 2 mg (university table)',
    (volume_mL, printed) => {
      const mass_mg = massOfVolume_mg({ volume_mL, density_g_per_mL: 0.978 });
      expect(Math.abs(mass_mg - printed)).toBeLessThanOrEqual(Math.max(2, 0.004 * printed));
    },
  );
  test('limit: no volume, no mass', () => {
    expect(massOfVolume_mg({ volume_mL: 0, density_g_per_mL: 0.5 })).toBe(0);
  });
  test.each([
    [{ volume_mL: -1 }, 'out-of-range'],
    [{ density_g_per_mL: 0 }, 'not-positive'],
    [{ density_g_per_mL: NaN }, 'not-a-number'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => massOfVolume_mg({ volume_mL: 0.5, density_g_per_mL: 0.6, ...change })).toThrow(code);
  });
});
