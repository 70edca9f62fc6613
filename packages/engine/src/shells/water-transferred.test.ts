import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { waterTransferred_mg } from './water-transferred.ts';

const shell = Object.freeze({ shellMass_mg: 96, waterBefore_frac: 0.145, waterAfter_frac: 0.12 });

describe('waterTransferred_mg', () => {
  test('golden: 96 mg from 14.5 to 12 %: dry 82.08 mg, x (.169591 - .136364) = 2.72727 mg (by hand)', () => {
    expect(waterTransferred_mg(shell)).toBeCloseTo(2.7272727, 6);
  });
  test('property: the dry mass does not change', () => {
    const share = fc.double({ min: 0, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(share, share, (waterBefore_frac, waterAfter_frac) => {
        const water = waterTransferred_mg({ shellMass_mg: 96, waterBefore_frac, waterAfter_frac });
        expect((96 - water) * (1 - waterAfter_frac)).toBeCloseTo(96 * (1 - waterBefore_frac), 9);
      }),
      { seed: 1 },
    );
  });
  test('limit: no change, no water; drier before than after, water taken up', () => {
    expect(waterTransferred_mg({ ...shell, waterAfter_frac: 0.145 })).toBe(0);
    expect(waterTransferred_mg({ ...shell, waterAfter_frac: 0.16 })).toBeLessThan(0);
  });
  test.each([
    [{ shellMass_mg: 0 }, 'not-positive'],
    [{ waterBefore_frac: NaN }, 'not-a-number'],
    [{ waterBefore_frac: -0.01 }, 'out-of-range'],
    [{ waterAfter_frac: 1 }, 'out-of-range'],
    [{ waterAfter_frac: 14.5 }, 'out-of-range'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => waterTransferred_mg({ ...shell, ...change })).toThrow(code);
  });
});
