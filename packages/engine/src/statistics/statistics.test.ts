import { describe, expect, test } from 'vitest';
import { computeEntry } from '#catalogue';
import { entries } from './entries.ts';

function computed(id: string, inputs: Record<string, unknown>) {
  const entry = entries.find((one) => one.id === `statistics.${id}`);
  if (!entry) throw new Error(id);
  return computeEntry(entry, inputs);
}

describe('entries', () => {
  test('golden: USP questions and answers on <905>: mean 105.9, sd 5.0, n 10 gives AV 16.4 with M 101.5', () => {
    const found = computed('acceptance-value', { mean_pct: 105.9, sd_pct: 5, unitCount: 10 });
    expect(found).toMatchObject({ ok: true, outputs: { reference_pct: 101.5 } });
    expect(found.ok && found.outputs['acceptanceValue_pct']).toBeCloseTo(16.4, 10);
  });
  // Design reference, 2e6 samples of another program, standard error below 0.0004.
  test.each([
    [3, 0.9987],
    [3.5, 0.981],
    [4, 0.903],
    [4.5, 0.74],
    [5, 0.531],
  ])('golden: uniformity of mass, 7.5 percent class, at RSD %s passes with %s', (relativeSd_pct, pass) => {
    const found = computed('uniformity-of-mass-pass', { mean_mg: 430, relativeSd_pct });
    expect(found.ok && found.outputs['pass_frac']).toBeCloseTo(pass, 2.6);
  });
  const conduct = { route: ['uniformity-of-mass'], purpose: 'release' };
  test('refuses: 19 contents cannot tell, never pass', () => {
    const contents_mg = Array.from({ length: 19 }, () => 400);
    expect(computed('uniformity-of-mass', { contents_mg, ...conduct })).toEqual({
      ok: true,
      outputs: { verdict: 'cannot-tell', reasons: ['not-twenty-contents'], next: 'none' },
    });
  });
  test('refuses: a judgement without purpose, and data of a trial', () => {
    const contents_mg = Array.from({ length: 20 }, () => 400);
    expect(computed('uniformity-of-mass', { contents_mg, route: conduct.route })).toMatchObject({ ok: false });
    expect(computed('uniformity-of-mass', { contents_mg, ...conduct, purpose: 'trial' })).toMatchObject({
      outputs: { verdict: 'cannot-tell', reasons: ['trial-data'] },
    });
  });
  test('refuses: NaN never reaches a verdict', () => {
    expect(computed('dosage-units-pass', { mean_pct: NaN, sd_pct: 3 })).toMatchObject({ ok: false });
    expect(() => computed('acceptance-value', { mean_pct: 100, sd_pct: 3, unitCount: 12 })).toThrow('out-of-range');
  });
});
