import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meanStress_frac } from './mean-stress.ts';
import { siloStressLimit_Pa } from './silo-stress-limit.ts';
import { siloStress_Pa } from './silo-stress.ts';
import { transmittedStress_frac } from './transmitted-stress.ts';

const plug = Object.freeze({
  wallFriction_ratio: 0.35,
  lateralStress_ratio: 0.45,
  length_mm: 14,
  diameter_mm: 6.6,
});
const silo = Object.freeze({
  density_kg_per_m3: 500,
  diameter_m: 0.2,
  wallFriction_ratio: 0.4,
  lateralStress_ratio: 0.45,
  gravity_m_per_s2: 9.81,
});

describe('transmittedStress_frac, meanStress_frac', () => {
  test('golden: k = 4 x .35 x .45 x 14 / 6.6 = 1.336364; e^-k = .26280, (1 - .26280) / k = .55165 (by hand, table of e^-x)', () => {
    expect(transmittedStress_frac(plug)).toBeCloseTo(0.2628, 4);
    expect(2 * meanStress_frac(plug)).toBeCloseTo(1.1033, 4);
  });
  test('property: the mean lies between both ends and solves k mean = 1 - transmitted', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 60, noNaN: true }), (length_mm) => {
        const column = { ...plug, length_mm };
        const [low, mean] = [transmittedStress_frac(column), meanStress_frac(column)];
        expect(mean).toBeGreaterThanOrEqual(low);
        expect(mean).toBeLessThanOrEqual(1);
        const k = (4 * 0.35 * 0.45 * length_mm) / 6.6;
        expect(Math.abs(k * mean - (1 - low))).toBeLessThan(1e-15);
      }),
      { seed: 1 },
    );
  });
  test('property: series and closed form of the mean meet where they change over', () => {
    // k = 1e-3 at length 1e-3 / (4 x .25 x 1 / 1)
    const at = (length_mm: number): number =>
      meanStress_frac({ wallFriction_ratio: 0.25, lateralStress_ratio: 1, length_mm, diameter_mm: 1 });
    expect(Math.abs(at(0.000999999999) - at(0.001000000001))).toBeLessThan(2e-12);
  });
  test.each(['wallFriction_ratio', 'lateralStress_ratio', 'length_mm'])('limit: %s = 0 transmits everything', (key) => {
    expect(transmittedStress_frac({ ...plug, [key]: 0 })).toBe(1);
    expect(meanStress_frac({ ...plug, [key]: 0 })).toBe(1);
  });
  test.each([
    [{ wallFriction_ratio: -0.1 }, 'out-of-range'],
    [{ lateralStress_ratio: NaN }, 'not-a-number'],
    [{ length_mm: -1 }, 'out-of-range'],
    [{ diameter_mm: 0 }, 'not-positive'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => transmittedStress_frac({ ...plug, ...change })).toThrow(code);
    expect(() => meanStress_frac({ ...plug, ...change })).toThrow(code);
  });
});

describe('siloStress_Pa, siloStressLimit_Pa', () => {
  test('golden: mu = K = .4: 500 x 9.81 x .2 / .64 = 1532.81 Pa; z = .3 m: x (1 - e^-.96) = 945.91 Pa (by hand)', () => {
    const column = { ...silo, lateralStress_ratio: 0.4 };
    expect(siloStressLimit_Pa(column)).toBeCloseTo(1532.8125, 6);
    expect(siloStress_Pa({ ...column, depth_m: 0.3 })).toBeCloseTo(945.91, 2);
  });
  test('property: never above the weight of the column, nor above its limit, and grows with depth', () => {
    const depth = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(depth, depth, (one, other) => {
        const deep = siloStress_Pa({ ...silo, depth_m: Math.max(one, other) });
        expect(deep).toBeLessThanOrEqual(500 * 9.81 * Math.max(one, other) * (1 + 1e-15));
        expect(deep).toBeLessThanOrEqual(siloStressLimit_Pa(silo) * (1 + 1e-14));
        expect(deep).toBeGreaterThanOrEqual(siloStress_Pa({ ...silo, depth_m: Math.min(one, other) }) * (1 - 1e-14));
      }),
      { seed: 2 },
    );
  });
  test('limit: without friction it is the weight; at the surface nothing; gravity left out is 9.81', () => {
    expect(siloStress_Pa({ ...silo, wallFriction_ratio: 0, depth_m: 0.3 })).toBeCloseTo(500 * 9.81 * 0.3, 9);
    expect(siloStress_Pa({ ...silo, depth_m: 0 })).toBe(0);
    const { gravity_m_per_s2, ...without } = silo;
    expect(siloStressLimit_Pa(without)).toBe(siloStressLimit_Pa({ ...without, gravity_m_per_s2 }));
    expect(siloStress_Pa({ ...without, depth_m: 1 })).toBe(siloStress_Pa({ ...silo, depth_m: 1 }));
  });
  test.each([
    [{ density_kg_per_m3: 0 }, 'not-positive'],
    [{ diameter_m: NaN }, 'not-a-number'],
    [{ gravity_m_per_s2: -9.81 }, 'not-positive'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => siloStress_Pa({ ...silo, depth_m: 0.3, ...change })).toThrow(code);
    expect(() => siloStressLimit_Pa({ ...silo, ...change })).toThrow(code);
  });
  test('refuses: no limit without friction, no depth below 0', () => {
    expect(() => siloStressLimit_Pa({ ...silo, wallFriction_ratio: 0 })).toThrow('not-positive');
    expect(() => siloStress_Pa({ ...silo, depth_m: -0.1 })).toThrow('out-of-range');
  });
});
