import { describe, expect, test } from 'vitest';
import { ALDER_BRIEF, searchInput } from '../../fixtures/alder-200.ts';
import type { Brief } from './brief.ts';
import { search } from './search.ts';

const withTarget = (total_mg: number): Brief => {
  const [part] = ALDER_BRIEF.parts;
  return { ...ALDER_BRIEF, parts: [{ ...part, target: { rule: 'fixed-fill', fill_mg: total_mg, substances: [] } }] };
};

describe('search', () => {
  const design = search(searchInput());
  const [first] = design.candidates;

  test('golden: demo product on the mounted disc 15.5 with pins 3.5, 2.2, 1.3, 0.8, flush (design reference)', () => {
    expect(first).toMatchObject({ rank: 1, size: '0', settings: { parts: { disc: 'D66-155', springs: 'S50' } } });
    expect(Object.values(first?.settings.values ?? {})).toEqual([3.5, 2.2, 1.3, 0.8, 0]);
    expect(first?.merits.sampleMeansOutside_frac).toBeCloseTo(0.097, 3);
    expect(first?.prediction.mass_mg).toBeCloseTo(430.5, 1);
  });
  test('golden: tare of 50 shells with sd 2.3 mg has a standard error of 0.33 mg; gross = net + 97 (design reference)', () => {
    expect(first?.card?.tare.standardError_mg).toBeCloseTo(0.33, 2);
    expect(first?.card?.individualAction).toMatchObject({ netLow_mg: 397.75, grossLow_mg: 494.75, netHigh_mg: 462.25 });
    expect(first?.card?.individualAlert.netLow_mg).toBeCloseTo(408.5, 9);
  });
  test('golden: 98 of 100 rounded outward to 5 mg; under the mean limit 417 the pin with most range left, pin 4 (design reference)', () => {
    if (!first) throw new Error('no candidate');
    const { expected, interval } = first;
    expect(expected.meanLow_mg).toBeCloseTo(417.1, 9);
    expect(expected.under?.adjuster).toBe('pin4Depth_mm');
    expect(expected.low_mg % 5).toBe(0);
    expect(expected.low_mg).toBeLessThanOrEqual(interval.low98_mg);
    expect(expected.high_mg).toBeGreaterThanOrEqual(interval.high98_mg);
  });
  test('golden: content spread is root 2.2^2 + 2^2 = 3.0 %, uniformity of mass binds (design reference; by hand)', () => {
    expect(first?.outlook.contents[0]?.unit_pct).toBeCloseTo(3, 1);
    const binding = first?.outlook.tests[first.outlook.bindingIndex ?? -1];
    expect(binding?.test).toBe('uniformity-of-mass');
    expect(binding?.pass_frac).toBeLessThan(0.999);
  });
  test('property: every place in the ranking says what decided it, and every candidate gives the target', () => {
    design.candidates.forEach((candidate, i) => {
      expect(candidate.rank).toBe(i + 1);
      expect(candidate.decidedBy !== undefined).toBe(i < design.candidates.length - 1);
      expect(Math.abs(candidate.prediction.mass_mg - 430)).toBeLessThan(1.5);
      expect(candidate.prediction.fit).toBe('rigid');
    });
  });
  test('property: the same brief and seed give the same bytes; another seed moves only what is drawn', () => {
    expect(JSON.stringify(search(searchInput()))).toBe(JSON.stringify(design));
    const other = search({ ...searchInput(), seed: 2 });
    expect(other.candidates.map(({ settings }) => settings)).toEqual(design.candidates.map(({ settings }) => settings));
    expect(other.candidates[0]?.interval.low90_mg).not.toBe(first?.interval.low90_mg);
  });
  test('limit: a shell whose dimensions are not known is left out with that reason', () => {
    expect(design.rejections.find(({ size }) => size === '1el')?.reason.code).toBe('no-geometry');
  });
  test('limit: where nothing fits every shell says why', () => {
    const none = search(searchInput(withTarget(900)));
    expect(none.candidates).toEqual([]);
    expect(new Set(none.rejections.map(({ size }) => size))).toEqual(new Set(['0', '1', '1el']));
  });
  test('limit: a powder that forms no slug is rejected by its number, in every shell', () => {
    const [part] = ALDER_BRIEF.parts;
    const material = { ...part.material, slug: { isHeld: false, force_N: 75 } };
    const none = search(searchInput({ ...ALDER_BRIEF, parts: [{ ...part, material }] }));
    expect(none.rejections.filter(({ reason }) => reason.code === 'no-slug').map(({ size }) => size)).toEqual([
      '0',
      '1',
    ]);
  });
  test('limit: only slugs that crumble: they are offered, each with the warning', () => {
    const [part] = ALDER_BRIEF.parts;
    const material = {
      ...part.material,
      axialSpringback_pct: { basis: 'calibrated', mean: 20, sd: 1, from: 'test' } as const,
    };
    const { candidates } = search(searchInput({ ...ALDER_BRIEF, parts: [{ ...part, material }] }));
    expect(candidates.length).toBeGreaterThan(0);
    for (const { prediction } of candidates)
      expect(prediction.warnings.map(({ code }) => code)).toContain('by-crumbling');
  });
  test('regression: the example of the sheet never drives a pin into the base of the disc', () => {
    const [part] = ALDER_BRIEF.parts;
    const b_per_MPa = { basis: 'measured', mean: 1.44, sd: 0.07, n: 1 } as const;
    const a_frac = { basis: 'measured', mean: 0.55, sd: 0.03, n: 1 } as const;
    const compression = { law: 'kawakita', a_frac, b_per_MPa, initialDensity_g_per_mL: 0.54 } as const;
    const material = { ...part.material, compression };
    const { candidates } = search(searchInput({ ...ALDER_BRIEF, parts: [{ ...part, material }] }));
    expect(candidates.length).toBeGreaterThan(0);
  });
  test('limit: a route that weighing cannot judge is cannot-tell, never a probability', () => {
    const { candidates } = search(
      searchInput({ ...ALDER_BRIEF, route: [{ test: 'uniformity-of-content', use: 'release' }] }),
    );
    expect(candidates[0]?.outlook.tests).toEqual([
      { test: 'uniformity-of-content', use: 'release', verdict: 'cannot-tell' },
    ]);
    expect(candidates[0]?.outlook).not.toHaveProperty('bindingIndex');
  });
  test('limit: without a weighed lot the tare is a guess of trade custom without a standard error', () => {
    const { candidates } = search(searchInput({ ...ALDER_BRIEF, shells: [{ size: '0' }] }));
    expect(candidates[0]?.card?.tare).toMatchObject({ basis: 'guess', shellCount: 0 });
    expect(candidates[0]?.card?.tare).not.toHaveProperty('standardError_mg');
  });
});
