import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { afterSetUp } from './after-set-up.ts';

const stroke_pct2 = 0.8 * 0.8;
const ALDER = {
  unit: { mean_pct: 2.2, sd_pct: 0.6 },
  strokeShare_frac: stroke_pct2 / (2.2 * 2.2),
  betweenTimes: { mean_pct: 1, sd_pct: 0.3 },
  sampleCount: 20,
  boreCount: 12,
  setUpSampleCount: 1,
  limits: { meanAction_pct: 3, individualAction_pct: 7.5 },
} as const;

describe('afterSetUp', () => {
  test('golden: design reference of the demo product: 0.097 of sample means outside with stroke 0.8, 0.069 without', () => {
    expect(afterSetUp(ALDER).sampleMeansOutside_frac).toBeCloseTo(0.097, 3);
    expect(afterSetUp({ ...ALDER, strokeShare_frac: 0 }).sampleMeansOutside_frac).toBeCloseTo(0.069, 3);
  });
  test.each([
    [1, 0.59],
    [2, 0.76],
    [5, 0.94],
  ])(
    'golden: %s set-up sample(s) of 20 hit the target within 1 percent in %s of cases (design reference, two digits)',
    (setUpSampleCount, share) => {
      const sharp = { unit: { mean_pct: 3, sd_pct: 0 }, betweenTimes: { mean_pct: 1, sd_pct: 0 }, strokeShare_frac: 0 };
      const { setUp_pct } = afterSetUp({ ...ALDER, ...sharp, setUpSampleCount });
      const hits =
        1 -
        afterSetUp({ ...ALDER, ...sharp, setUpSampleCount, limits: { meanAction_pct: 1, individualAction_pct: 1 } })
          .sampleMeansOutside_frac;
      expect(setUp_pct).toBeCloseTo(Math.sqrt((1 + 9 / 20) / setUpSampleCount), 12);
      expect(hits).toBeLessThan(share);
      expect(Math.abs(erf(1 / setUp_pct / Math.SQRT2) - share)).toBeLessThan(0.005);
    },
  );
  test('limit: no spread at all between times and a tiny one between units leaves nothing outside', () => {
    const still = { unit: { mean_pct: 0.1, sd_pct: 0 }, betweenTimes: { mean_pct: 0.01, sd_pct: 0 } };
    expect(afterSetUp({ ...ALDER, ...still })).toMatchObject({ capsulesOutside_frac: 0 });
  });
  test('property: more set-up samples never make it worse, and shares stay shares', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.double({ min: 0.5, max: 8, noNaN: true }), (k, mean_pct) => {
        const input = { ...ALDER, unit: { mean_pct, sd_pct: mean_pct / 4 } };
        const [few, more] = [
          afterSetUp({ ...input, setUpSampleCount: k }),
          afterSetUp({ ...input, setUpSampleCount: k + 1 }),
        ];
        expect(more.sampleMeansOutside_frac).toBeLessThanOrEqual(few.sampleMeansOutside_frac);
        expect(few.capsulesOutside_frac).toBeGreaterThanOrEqual(0);
        expect(few.capsulesOutside_frac).toBeLessThanOrEqual(1);
      }),
      { seed: 1, numRuns: 30 },
    );
  });
});

/** Abramowitz & Stegun 7.1.26, error below 1.5e-7 (from memory): a twin of another make. */
function erf(x: number): number {
  const t = 1 / (1 + 0.3275911 * x);
  return (
    1 -
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) * Math.exp(-x * x)
  );
}
