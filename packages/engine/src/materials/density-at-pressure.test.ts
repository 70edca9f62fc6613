import { describe, expect, test } from 'vitest';
import type { CompressionLaw } from './compression-law.ts';
import { densityAtPressure_g_per_mL } from './density-at-pressure.ts';
import { walkerRelativeVolume_ratio } from './walker-relative-volume.ts';

const kawakita = Object.freeze({ kind: 'kawakita', a_frac: 0.6, b_per_MPa: 3, initialDensity_g_per_mL: 0.35 } as const);
const line = Object.freeze({ slope_pct: 20, intercept_pct: 180, referencePressure_MPa: 0.01 });
const walker = Object.freeze({ kind: 'walker', ...line, trueDensity_g_per_mL: 1.5 } as const);

describe('densityAtPressure_g_per_mL', () => {
  test('golden: .35 g/mL, a .6, b 3/MPa, 1.2 MPa: C = .6 x 3.6 / 4.6 = .469565, .35 / .530435 = .659836 (by hand)', () => {
    expect(densityAtPressure_g_per_mL(kawakita, 1.2)).toBeCloseTo(0.6598361, 7);
  });
  test('golden: walker, a decade above the reference pressure: 180 - 20 = 160 %, 1.5 / 1.6 = .9375 g/mL (by hand)', () => {
    expect(densityAtPressure_g_per_mL(walker, 0.1)).toBeCloseTo(0.9375, 12);
  });
  test('limit: no pressure leaves the initial density; walker never passes the true density', () => {
    expect(densityAtPressure_g_per_mL(kawakita, 0)).toBe(0.35);
    expect(densityAtPressure_g_per_mL(kawakita, 1e9)).toBeCloseTo(0.35 / 0.4, 8);
    expect(densityAtPressure_g_per_mL(walker, 1e4)).toBe(1.5);
  });
  test.each<[CompressionLaw, number, string]>([
    [kawakita, NaN, 'not-a-number'],
    [kawakita, -1, 'out-of-range'],
    [{ ...kawakita, a_frac: 1 }, 1, 'out-of-range'],
    [{ ...kawakita, b_per_MPa: 0 }, 1, 'not-positive'],
    [{ ...kawakita, initialDensity_g_per_mL: NaN }, 1, 'not-a-number'],
    [walker, 0, 'not-positive'],
    [walker, NaN, 'not-a-number'],
    [{ ...walker, trueDensity_g_per_mL: 0 }, 1, 'not-positive'],
  ])('refuses: %o at %s MPa -> %s', (law, pressure, code) => {
    expect(() => densityAtPressure_g_per_mL(law, pressure)).toThrow(code);
  });
});

describe('walkerRelativeVolume_ratio', () => {
  test('golden: slope 20, intercept 180, a decade of pressure: 1.6 (by hand)', () => {
    expect(walkerRelativeVolume_ratio({ ...line, pressure_MPa: 0.1 })).toBeCloseTo(1.6, 12);
  });
  test('limit: at the reference pressure it is the intercept', () => {
    expect(walkerRelativeVolume_ratio({ ...line, pressure_MPa: 0.01 })).toBe(1.8);
  });
  test.each([
    [{ pressure_MPa: 0 }, 'not-positive'],
    [{ slope_pct: -20 }, 'not-positive'],
    [{ intercept_pct: 99 }, 'out-of-range'],
    [{ referencePressure_MPa: NaN }, 'not-a-number'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => walkerRelativeVolume_ratio({ ...line, pressure_MPa: 0.1, ...change })).toThrow(code);
  });
});
