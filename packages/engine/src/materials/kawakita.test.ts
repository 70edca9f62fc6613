import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { densityAfterTaps_g_per_mL } from './density-after-taps.ts';
import { densityAtPressure_g_per_mL } from './density-at-pressure.ts';
import { kawakitaSlope_per_MPa } from './kawakita-slope.ts';
import { kawakitaTapping_frac } from './kawakita-tapping.ts';

const tapping = Object.freeze({ a_frac: 0.35, b_per_tap: 0.08, tapCount: 100 });

describe('kawakitaTapping_frac, densityAfterTaps_g_per_mL', () => {
  test('golden: a .35, b .08, 100 taps: .35 x 8 / 9 = .311111; .40 g/mL becomes .40 / (1 - .311111) = .580645 (by hand)', () => {
    expect(kawakitaTapping_frac(tapping)).toBeCloseTo(0.3111111, 7);
    expect(densityAfterTaps_g_per_mL({ ...tapping, initialDensity_g_per_mL: 0.4 })).toBeCloseTo(0.5806452, 7);
  });
  test('property: n/C is a straight line in n, 1/(ab) + n/a (linear form of the law)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), (tapCount) => {
        const line = 1 / (0.35 * 0.08) + tapCount / 0.35;
        expect(Math.abs(tapCount / kawakitaTapping_frac({ ...tapping, tapCount }) / line - 1)).toBeLessThan(1e-12);
      }),
      { seed: 1 },
    );
  });
  test('limit: no tap, no change; very many taps, the reduction a', () => {
    expect(kawakitaTapping_frac({ ...tapping, tapCount: 0 })).toBe(0);
    expect(densityAfterTaps_g_per_mL({ ...tapping, tapCount: 0, initialDensity_g_per_mL: 0.4 })).toBe(0.4);
    expect(kawakitaTapping_frac({ ...tapping, tapCount: 1e9 })).toBeCloseTo(0.35, 7);
  });
  test.each([
    [{ a_frac: 0 }, 'not-positive'],
    [{ a_frac: 1 }, 'out-of-range'],
    [{ b_per_tap: 0 }, 'not-positive'],
    [{ tapCount: -1 }, 'out-of-range'],
    [{ tapCount: NaN }, 'not-a-number'],
    [{ initialDensity_g_per_mL: 0 }, 'not-positive'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => densityAfterTaps_g_per_mL({ ...tapping, initialDensity_g_per_mL: 0.4, ...change })).toThrow(code);
  });
});

describe('kawakitaSlope_per_MPa', () => {
  const pair = Object.freeze({
    initialDensity_g_per_mL: 0.6,
    density_g_per_mL: 0.8,
    pressure_MPa: 0.5,
    a_frac: 0.5,
  });
  test('golden: .6 to .8 g/mL at .5 MPa with a = .5: C = .25, b = .25 / (.5 x .25) = 2 (by hand)', () => {
    expect(kawakitaSlope_per_MPa(pair)).toBeCloseTo(2, 12);
  });
  test('property: the law through the pair gives the pair back', () => {
    const any = fc.record({
      initialDensity_g_per_mL: fc.double({ min: 0.2, max: 1, noNaN: true }),
      gain: fc.double({ min: 0.01, max: 0.95, noNaN: true }),
      pressure_MPa: fc.double({ min: 0.01, max: 20, noNaN: true }),
      a_frac: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ initialDensity_g_per_mL, gain, pressure_MPa, a_frac }) => {
        const density_g_per_mL = initialDensity_g_per_mL / (1 - gain * a_frac);
        const b_per_MPa = kawakitaSlope_per_MPa({ initialDensity_g_per_mL, density_g_per_mL, pressure_MPa, a_frac });
        const law = { kind: 'kawakita', a_frac, b_per_MPa, initialDensity_g_per_mL } as const;
        expect(Math.abs(densityAtPressure_g_per_mL(law, pressure_MPa) / density_g_per_mL - 1)).toBeLessThan(1e-9);
      }),
      { seed: 2 },
    );
  });
  test.each([
    [{ density_g_per_mL: 0.6 }, 'out-of-range'],
    [{ density_g_per_mL: 0.5 }, 'out-of-range'],
    [{ density_g_per_mL: 1.2 }, 'out-of-range'],
    [{ density_g_per_mL: NaN }, 'not-a-number'],
    [{ pressure_MPa: 0 }, 'not-positive'],
    [{ a_frac: 1 }, 'out-of-range'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => kawakitaSlope_per_MPa({ ...pair, ...change })).toThrow(code);
  });
  test('refuses: a density beyond the densest state, with the reduction and a as facts', () => {
    expect(() => kawakitaSlope_per_MPa({ ...pair, density_g_per_mL: 1.25 })).toThrow('"reduction_frac":0.52');
  });
});
