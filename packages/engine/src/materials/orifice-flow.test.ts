import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { orificeFlow_g_per_s } from './orifice-flow.ts';

const stream = Object.freeze({ density_kg_per_m3: 800, orificeDiameter_m: 0.006, particleDiameter_m: 0.001 });

describe('orificeFlow_g_per_s', () => {
  test('golden: .58 x 800 x 3.13209 x .0046^2.5 (1.435141e-6) = 2.08568e-3 kg/s (by hand)', () => {
    expect(orificeFlow_g_per_s(stream)).toBeCloseTo(2.0857, 4);
  });
  test('property: points of no size make the flow grow with the power 2.5 of the orifice', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.1, noNaN: true }), (orificeDiameter_m) => {
        const points = { density_kg_per_m3: 800, particleDiameter_m: 1e-12 };
        const once = orificeFlow_g_per_s({ ...points, orificeDiameter_m });
        const wider = orificeFlow_g_per_s({ ...points, orificeDiameter_m: 4 * orificeDiameter_m });
        expect(Math.abs(wider / once - 32)).toBeLessThan(1e-6);
      }),
      { seed: 1 },
    );
  });
  test('limit: gravity left out is 9.81', () => {
    expect(orificeFlow_g_per_s({ ...stream, gravity_m_per_s2: 9.81 })).toBe(orificeFlow_g_per_s(stream));
  });
  test.each([
    [{ orificeDiameter_m: 0.0014 }, 'out-of-range'],
    [{ orificeDiameter_m: 0.001 }, 'out-of-range'],
    [{ particleDiameter_m: 0 }, 'not-positive'],
    [{ density_kg_per_m3: NaN }, 'not-a-number'],
    [{ gravity_m_per_s2: 0 }, 'not-positive'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => orificeFlow_g_per_s({ ...stream, ...change })).toThrow(code);
  });
});
