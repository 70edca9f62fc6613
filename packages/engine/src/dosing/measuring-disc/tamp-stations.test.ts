import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import golden from '../../../golden/disc-stations.json' with { type: 'json' };
import { pressureAtDensity_MPa } from '#materials';
import { boreArea_mm2 } from './bore-area.ts';
import { discRecurrence_mg } from './disc-recurrence.ts';
import { entries } from './entries.ts';
import { tampStations } from './tamp-stations.ts';
import type { DiscRun } from './disc-run.ts';
import { judgeCase } from '#catalogue';

const ALDER: DiscRun = {
  boreArea_mm2: boreArea_mm2(6.6),
  discHeight_mm: 15.5,
  depths_mm: [3.5, 2.2, 1.3, 0.8, 0],
  feedDensity_g_per_mL: 0.54,
  refill_ratio: 1,
  captured_mg: 0,
  law: { kind: 'kawakita', a_frac: 0.55, b_per_MPa: 1.6, initialDensity_g_per_mL: 0.54 },
  preload_N: 50,
  rate_N_per_mm: 6,
  isRefilledAfterLastPin: true,
};

const depth = fc.double({ min: 0.1, max: 6, noNaN: true });
const depths = fc.array(depth, { minLength: 1, maxLength: 6 });
const spring = fc.record({
  preload_N: fc.double({ min: 1, max: 80, noNaN: true }),
  rate_N_per_mm: fc.double({ min: 0.5, max: 20, noNaN: true }),
});

describe('tampStations', () => {
  test.each(golden)('golden: $id (second implementation in another language)', (check) => {
    expect(judgeCase(check, (id) => entries.find((entry) => entry.id === id))).toMatchObject({ verdict: 'pass' });
  });
  test('golden: demo product 286, 351, 392, 416, 430.5 mg at 15, 26, 32, 36 N (design reference, printed digits)', () => {
    const stations = tampStations(ALDER);
    expect(ALDER.feedDensity_g_per_mL * ALDER.boreArea_mm2 * ALDER.discHeight_mm).toBeCloseTo(286, -0.3);
    expect(stations.map(({ mass_mg }) => Math.round(mass_mg))).toEqual([351, 392, 416, 430, 430]);
    expect(stations.at(-1)?.mass_mg).toBeCloseTo(430.5, 1);
    expect(stations.slice(0, 4).map(({ force_N }) => Math.round(force_N ?? 0))).toEqual([15, 26, 32, 36]);
  });
  test('golden: deep pins 10, 7.5, 5, 2.5, 0 at H = 16 give 2.56 x the feed density by geometry alone (design reference)', () => {
    const input = {
      feedDensity_g_per_mL: 0.5,
      boreDiameter_mm: 6.6,
      discHeight_mm: 16,
      depths_mm: [10, 7.5, 5, 2.5, 0],
    };
    const masses_mg = discRecurrence_mg({ ...input, refills_ratio: [1, 1, 1, 1, 1] });
    expect((masses_mg.at(-1) ?? 0) / (masses_mg[0] ?? 1)).toBeCloseTo(2.56, 2);
  });
  test('golden: with 30 N springs stations 3 and 4 are on spring, 422 mg, and pins on stop keep 0.32 of their gain (design reference)', () => {
    const soft = { ...ALDER, preload_N: 30 };
    const mass_mg = (first_mm: number): number =>
      tampStations({ ...soft, depths_mm: [first_mm, 2.2, 1.3, 0.8, 0] }).at(-1)?.mass_mg ?? NaN;
    expect(tampStations(soft).map(({ regime }) => regime)).toEqual([
      'on-stop',
      'on-stop',
      'on-spring',
      'on-spring',
      'flush',
    ]);
    expect(Math.round(mass_mg(3.5))).toBe(422);
    expect((mass_mg(3.6) - mass_mg(3.4)) / 0.2 / (0.54 * ALDER.boreArea_mm2)).toBeCloseTo(0.32, 2);
  });
  test('property: a spring that never yields gives the geometric recurrence', () => {
    fc.assert(
      fc.property(depths, fc.double({ min: 0.6, max: 1.4, noNaN: true }), (depths_mm, refill_ratio) => {
        const law = { ...ALDER.law, a_frac: 0.99, b_per_MPa: 1e9 } as const;
        const stations = tampStations({ ...ALDER, depths_mm, refill_ratio, law, preload_N: 1e12 });
        const input = { feedDensity_g_per_mL: 0.54, boreDiameter_mm: 6.6, discHeight_mm: 15.5, depths_mm };
        const masses_mg = discRecurrence_mg({ ...input, refills_ratio: depths_mm.map(() => refill_ratio) });
        stations.forEach(({ mass_mg }, k) => {
          expect(mass_mg).toBeCloseTo(masses_mg[k + 1] ?? NaN, 9);
        });
      }),
      { seed: 1 },
    );
  });
  test('property: on spring the bed and the spring push equally; mass never falls; no pin goes below its stop', () => {
    fc.assert(
      fc.property(depths, spring, (depths_mm, pins) => {
        const run = { ...ALDER, ...pins, depths_mm };
        let before_mg = run.feedDensity_g_per_mL * run.boreArea_mm2 * run.discHeight_mm;
        for (const { regime, reached_mm, set_mm, force_N = NaN, density_g_per_mL, mass_mg } of tampStations(run)) {
          if (regime === 'on-spring')
            expect(run.boreArea_mm2 * pressureAtDensity_MPa(run.law, density_g_per_mL)).toBeCloseTo(force_N, 6);
          if (regime === 'on-stop') expect(force_N).toBeLessThanOrEqual(run.preload_N);
          expect(reached_mm).toBeGreaterThanOrEqual(0);
          expect(reached_mm).toBeLessThanOrEqual(set_mm);
          expect(mass_mg).toBeGreaterThanOrEqual(before_mg);
          before_mg = mass_mg;
        }
      }),
      { seed: 1 },
    );
  });
  test('property: a deeper first pin never lowers the mass', () => {
    fc.assert(
      fc.property(depths, spring, depth, (depths_mm, pins, more_mm) => {
        const mass_mg = (first_mm: number): number =>
          tampStations({ ...ALDER, ...pins, depths_mm: [first_mm, ...depths_mm] }).at(-1)?.mass_mg ?? NaN;
        expect(mass_mg(2 + more_mm)).toBeGreaterThanOrEqual(mass_mg(2) - 1e-9);
      }),
      { seed: 1 },
    );
  });
  test('limit: all pins flush leave the feed density', () => {
    const [only] = tampStations({ ...ALDER, depths_mm: [0] });
    expect(only).toMatchObject({ regime: 'flush', reached_mm: 0 });
    expect(only?.density_g_per_mL).toBeCloseTo(0.54, 12);
  });
  test('limit: a spring too weak to enter is limited, keeps the mass and shows its own force', () => {
    const law = { kind: 'kawakita', a_frac: 0.3, b_per_MPa: 0.01, initialDensity_g_per_mL: 0.45 } as const;
    const [only] = tampStations({ ...ALDER, law, depths_mm: [2], preload_N: 1, rate_N_per_mm: 1 });
    expect(only).toMatchObject({ regime: 'limited', reached_mm: 0, force_N: 3, captured_mg: 0 });
  });
});
