import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heckelSolidFraction_frac } from './heckel-solid-fraction.ts';

const compact = Object.freeze({ pressure_MPa: 3.5, yieldPressure_MPa: 60, intercept_ratio: 0.5 });

describe('heckelSolidFraction_frac', () => {
  test('golden: 3.5 / 60 + .5 = .558333, 1 - e^-.558333 = .42784 (by hand)', () => {
    expect(heckelSolidFraction_frac(compact)).toBeCloseTo(0.42784, 5);
  });
  test('property: ln(1/(1 - D)) is a straight line in the pressure (the plot the law is read from)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 300, noNaN: true }), (pressure_MPa) => {
        const solid = heckelSolidFraction_frac({ ...compact, pressure_MPa });
        expect(Math.log(1 / (1 - solid))).toBeCloseTo(pressure_MPa / 60 + 0.5, 10);
      }),
      { seed: 1 },
    );
  });
  test('limit: no pressure and no intercept give 0, a huge pressure gives 1', () => {
    expect(heckelSolidFraction_frac({ ...compact, pressure_MPa: 0, intercept_ratio: 0 })).toBe(0);
    expect(heckelSolidFraction_frac({ ...compact, pressure_MPa: 1e6 })).toBe(1);
  });
  test.each([
    [{ yieldPressure_MPa: 0 }, 'not-positive'],
    [{ pressure_MPa: -1 }, 'out-of-range'],
    [{ intercept_ratio: NaN }, 'not-a-number'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => heckelSolidFraction_frac({ ...compact, ...change })).toThrow(code);
  });
});
