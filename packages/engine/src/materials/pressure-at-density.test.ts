import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CompressionLaw } from './compression-law.ts';
import { densityAtPressure_g_per_mL } from './density-at-pressure.ts';
import { pressureAtDensity_MPa } from './pressure-at-density.ts';

const kawakita: CompressionLaw = Object.freeze({
  kind: 'kawakita',
  a_frac: 0.55,
  b_per_MPa: 1.6,
  initialDensity_g_per_mL: 0.54,
});
const walker: CompressionLaw = Object.freeze({
  kind: 'walker',
  slope_pct: 20,
  intercept_pct: 180,
  referencePressure_MPa: 0.01,
  trueDensity_g_per_mL: 1.5,
});

describe('pressureAtDensity_MPa', () => {
  test('golden: .54 to .812 g/mL is 33 N on a 6.6 mm bore (worked example of the floor notes, C = .33498, by hand)', () => {
    // C = 1 - .54/.812 = .334975; P = .334975 / (1.6 (.55 - .334975)) = .97366 MPa; A = 34.2119 mm2; F = 33.31 N
    expect(pressureAtDensity_MPa(kawakita, 0.812)).toBeCloseTo(0.97366, 4);
    expect(pressureAtDensity_MPa(kawakita, 0.812) * 34.2119).toBeCloseTo(33.31, 1);
  });
  test('golden: walker, relative volume 1.6 at ten times the reference pressure (by hand: 180 - 20 log10(10) = 160 %)', () => {
    expect(pressureAtDensity_MPa(walker, 1.5 / 1.6)).toBeCloseTo(0.1, 12);
  });
  test.each([kawakita, walker])('property: undoes densityAtPressure_g_per_mL ($kind)', (law) => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 50, noNaN: true }), (pressure_MPa) => {
        const back = pressureAtDensity_MPa(law, densityAtPressure_g_per_mL(law, pressure_MPa));
        expect(Math.abs(back / pressure_MPa - 1)).toBeLessThan(1e-10);
      }),
      { seed: 1 },
    );
  });
  test.each([kawakita, walker])('property: never falls with density ($kind)', (law) => {
    const density = fc.double({ min: -0.2, max: 2, noNaN: true });
    fc.assert(
      fc.property(density, density, (one, other) => {
        const low = pressureAtDensity_MPa(law, Math.min(one, other));
        expect(low).toBeLessThanOrEqual(pressureAtDensity_MPa(law, Math.max(one, other)));
      }),
      { seed: 2 },
    );
  });
  test('limit: nothing at or below the initial density, Infinity from the densest state on', () => {
    expect(pressureAtDensity_MPa(kawakita, 0.54)).toBe(0);
    expect(pressureAtDensity_MPa(kawakita, 0.2)).toBe(0);
    expect(pressureAtDensity_MPa(kawakita, 0.54 / 0.45 + 1e-9)).toBe(Infinity);
    expect(pressureAtDensity_MPa(kawakita, Infinity)).toBe(Infinity);
    expect(pressureAtDensity_MPa(walker, 0)).toBe(0);
    expect(pressureAtDensity_MPa(walker, 1.5)).toBe(Infinity);
  });
  test.each([kawakita, walker])('limit: NaN stays NaN ($kind)', (law) => {
    expect(pressureAtDensity_MPa(law, NaN)).toBeNaN();
  });
  test('limit: a law with NaN in it gives NaN', () => {
    expect(pressureAtDensity_MPa({ ...kawakita, a_frac: NaN }, 0.8)).toBeNaN();
    expect(pressureAtDensity_MPa({ ...walker, slope_pct: NaN }, 0.8)).toBeNaN();
  });
});
