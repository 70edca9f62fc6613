import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { singleMeasurement } from '#quantity';
import { ALDER_POWDER, ALDER_SETTINGS, alderContext } from '../../../fixtures/alder-200.ts';
import { valuesAtMeans } from '../parameter-values.ts';
import { measuringDisc } from './measuring-disc.ts';

const density = (value: number) => singleMeasurement({ value, kind: 'density' });
const powder = (bulk: number, tapped: number) => ({
  bulkDensity_g_per_mL: density(bulk),
  tappedDensity_g_per_mL: density(tapped),
});
const codes = (findings: readonly { code: string }[]): readonly string[] => findings.map(({ code }) => code);

describe('accepts', () => {
  // Limits of the design reference (common practice, no source): suitable CI 15 to 31 and a slug at 75 N or less.
  test.each([
    [powder(0.5, 0.64), { isHeld: true, force_N: 50 }, 'suitable'],
    [powder(0.69, 1), { isHeld: true, force_N: 75 }, 'suitable'],
    [powder(0.6, 0.69), { isHeld: true, force_N: 50 }, 'possible'],
    [powder(0.4, 0.6), { isHeld: true, force_N: 50 }, 'possible'],
    [powder(0.5, 0.64), undefined, 'possible'],
    [powder(0.36, 0.58), { isHeld: true, force_N: 50 }, 'unsuitable'],
    [powder(0.5, 0.64), { isHeld: false, force_N: 75 }, 'unsuitable'],
    [powder(0.5, 0.64), { isHeld: true, force_N: 110 }, 'unsuitable'],
  ] as const)('golden: %o with slug %o is %s', (facts, slug, grade) => {
    const { accepts } = measuringDisc;
    expect(accepts(alderContext(slug ? { ...facts, slug } : facts)).grade).toBe(grade);
  });
});

describe('predict', () => {
  test('golden: demo product 430.5 mg at 0.812 g/mL, slug 16.3 of 17.3 mm, RSD 2.2 %, no warning (design reference)', () => {
    const prediction = measuringDisc.predict(alderContext(), ALDER_SETTINGS);
    expect(prediction.mass_mg).toBeCloseTo(430.5, 1);
    expect(prediction.density_g_per_mL).toBeCloseTo(0.812, 3);
    expect(prediction.released_mm).toBeCloseTo(16.3, 1);
    expect(prediction.longest_mm).toBeCloseTo(17.3, 1);
    expect(prediction.spread.unit_pct).toBeCloseTo(2.2, 1);
    expect(prediction.spread.unsure_pct).toBeCloseTo(0.6, 1);
    expect(prediction).toMatchObject({ fit: 'rigid', warnings: [] });
  });
  test('property: the density profile keeps the mass of the slug', () => {
    const { profile, density_g_per_mL } = measuringDisc.predict(alderContext(), ALDER_SETTINGS);
    const area = profile.slice(1).reduce((sum, point, i) => {
      const before = profile[i] ?? point;
      return sum + ((point.depth_frac - before.depth_frac) * (point.density_g_per_mL + before.density_g_per_mL)) / 2;
    }, 0);
    expect(area).toBeCloseTo(density_g_per_mL, 3);
  });
  test('golden: a last refill of 2 mm less springback 5 % of 13.5 mm leaves 1.3 mm loose (by hand)', () => {
    const values = { pin1Depth_mm: 0.5, pin2Depth_mm: 0.4, pin3Depth_mm: 0.3, pin4Depth_mm: 2, pin5Depth_mm: 0 };
    const { warnings } = measuringDisc.predict(alderContext(), { ...ALDER_SETTINGS, values });
    const loose = warnings.find(({ code }) => code === 'loose-last-refill');
    expect(loose?.numbers['loose_mm']).toBeCloseTo(2 - 0.05 * 13.5, 9);
  });
  test('golden: with 30 N springs stations 3 and 4 say so', () => {
    const parts = { ...ALDER_SETTINGS.parts, springs: 'S30' };
    const { warnings } = measuringDisc.predict(alderContext(), { ...ALDER_SETTINGS, parts });
    expect(warnings.map(({ code, numbers }) => [code, numbers['station']])).toEqual([
      ['on-spring', 3],
      ['on-spring', 4],
    ]);
  });
  test('limit: outside the validated range it says so', () => {
    const values = { ...ALDER_SETTINGS.values, pin1Depth_mm: 5.5 };
    expect(codes(measuringDisc.predict(alderContext(), { ...ALDER_SETTINGS, values }).warnings)).toContain(
      'outside-validated',
    );
  });
  test('property: a record of the machine replaces the guessed spread', () => {
    const recordedUnit_pct = { basis: 'measured', mean: 1.4, sd: 0.2, n: 6 } as const;
    const { spread } = measuringDisc.predict({ ...alderContext(), recordedUnit_pct }, ALDER_SETTINGS);
    const squares = spread.components.reduce((sum, { sd_pct }) => sum + sd_pct * sd_pct, 0);
    expect(Math.sqrt(squares)).toBeCloseTo(1.4, 12);
    expect(spread).toMatchObject({ unit_pct: 1.4, basis: 'measured' });
  });
  test('limit: poor flow adds the level of the bed, 1.0 % (common practice, no source)', () => {
    const sticky = alderContext({ ...ALDER_POWDER, ...powder(0.45, 0.64) });
    const { spread, warnings } = measuringDisc.predict(sticky, ALDER_SETTINGS);
    expect(spread.components.find(({ cause }) => cause === 'bed-level')?.sd_pct).toBe(1);
    expect(codes(warnings)).toContain('bed-level-counts');
  });
  test.each([
    [{ disc: 'D66-999', springs: 'S50' }, ALDER_SETTINGS.values, 'invalid-input'],
    [ALDER_SETTINGS.parts, { pin1Depth_mm: 3 }, 'invalid-input'],
    [ALDER_SETTINGS.parts, { ...ALDER_SETTINGS.values, pin1Depth_mm: 16 }, 'out-of-range'],
    [ALDER_SETTINGS.parts, { ...ALDER_SETTINGS.values, pin1Depth_mm: NaN }, 'out-of-range'],
  ])('refuses: parts %o values %o -> %s', (parts, values, code) => {
    expect(() => measuringDisc.predict(alderContext(), { parts, values })).toThrow(code);
  });
});

describe('solve', () => {
  test('golden: 430 mg on the mounted disc: pins 3.5, 2.2, 1.3, 0.8, flush (design reference)', () => {
    const solutions = measuringDisc.solve(alderContext(), 430);
    expect(solutions).toContainEqual({ kind: 'solved', settings: ALDER_SETTINGS });
  });
  test('property: every solution gives the target within half a step of every pin, or says why not', () => {
    fc.assert(
      fc.property(fc.double({ min: 250, max: 520, noNaN: true }), (target_mg) => {
        const context = alderContext();
        for (const solution of measuringDisc.solve(context, target_mg)) {
          if (solution.kind === 'unsolved') expect(solution.reason.code).not.toBe('');
          else
            expect(Math.abs(measuringDisc.predict(context, solution.settings).mass_mg - target_mg)).toBeLessThan(1.5);
        }
      }),
      { seed: 1, numRuns: 20 },
    );
  });
  test('limit: a target below the flush disc and one beyond the pins are explained with their numbers', () => {
    expect(measuringDisc.solve(alderContext(), 200).map((one) => one.kind === 'unsolved' && one.reason.code)).toEqual(
      Array.from({ length: 18 }, () => 'disc-too-tall'),
    );
    expect(
      codes(measuringDisc.solve(alderContext(), 900).flatMap((one) => (one.kind === 'unsolved' ? [one.reason] : []))),
    ).toContain('pins-cannot-reach');
  });
  test('limit: no disc of the size in stock', () => {
    const { filler, ...context } = alderContext();
    const parts = filler.parts.filter((part) => part.kind === 'spring-set');
    expect(measuringDisc.solve({ ...context, filler: { ...filler, parts } }, 430)).toMatchObject([
      { kind: 'unsolved', reason: { code: 'no-disc-for-size' } },
    ]);
  });
});

describe('withPart', () => {
  test('golden: a disc 0.5 mm higher adds 9 mg re-zeroed, 41 mg with the working readings kept (design reference)', () => {
    const context = alderContext();
    const mass_mg = (readingsKept: 'none' | 'working' | 'all'): number => {
      const settings = measuringDisc.withPart(context, ALDER_SETTINGS, {
        slot: 'disc',
        number: 'D66-160',
        readingsKept,
      });
      return measuringDisc.predict(context, settings).mass_mg - measuringDisc.predict(context, ALDER_SETTINGS).mass_mg;
    };
    expect(Math.round(mass_mg('none'))).toBe(9);
    expect(Math.round(mass_mg('working'))).toBe(41);
    expect(mass_mg('all')).toBeGreaterThan(mass_mg('working'));
  });
});

describe('sheet', () => {
  test('golden: scale values are zero reading plus depth on the disc of the zero check (by hand)', () => {
    const readings = measuringDisc
      .sheet(alderContext(), ALDER_SETTINGS)
      .flatMap(({ reading_division }) => reading_division ?? []);
    expect(readings.map((reading) => reading.toFixed(1))).toEqual(['21.5', '20.3', '19.2', '18.8', '18.0']);
  });
});

describe('evaluator', () => {
  test('property: agrees with predict at the prior means', () => {
    const context = alderContext();
    const values = valuesAtMeans(measuringDisc.parameters(context, ALDER_SETTINGS));
    const { mass_mg, regime } = measuringDisc.evaluator(context, ALDER_SETTINGS)(values);
    expect(mass_mg).toBe(measuringDisc.predict(context, ALDER_SETTINGS).mass_mg);
    const soft = { ...ALDER_SETTINGS, parts: { ...ALDER_SETTINGS.parts, springs: 'S30' } };
    expect(measuringDisc.evaluator(context, soft)({ ...values, springPreload_N: 30 }).regime).not.toBe(regime);
  });
});
