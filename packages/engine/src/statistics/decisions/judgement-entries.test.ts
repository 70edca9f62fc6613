import { describe, expect, test } from 'vitest';
import { computeEntry } from '#catalogue';
import { assuranceEntries } from '../assurance/entries.ts';
import { decisionEntries } from './entries.ts';

function computed(id: string, inputs: Record<string, unknown>) {
  const entry = [...decisionEntries, ...assuranceEntries].find((one) => one.id === `statistics.${id}`);
  if (!entry) throw new Error(id);
  return computeEntry(entry, inputs);
}
const outputs = (id: string, inputs: Record<string, unknown>) => {
  const found = computed(id, inputs);
  if (!found.ok) throw new Error(JSON.stringify(found.faults));
  return found.outputs;
};
const spread = (mean: number, step: number, count = 10): number[] =>
  Array.from({ length: count }, (_, i) => mean + (i % 2 === 0 ? step : -step));
const release = (...route: string[]) => ({ route, purpose: 'release' });

describe('judgementEntries', () => {
  const byContent = { ...release('dosage-units-by-content'), rounding: 'unrounded' };
  test('golden: by hand, stage 1 fails at 7 about 100, stage 2 decides with 5 about 100', () => {
    const stage1 = outputs('uniformity-of-dosage-units', { contents_pct: spread(100, 7), ...byContent });
    expect(stage1).toMatchObject({ verdict: 'cannot-tell', next: 'test-further-units', stage1: { belowCount: 0 } });
    const both = { contents_pct: spread(100, 7), furtherContents_pct: spread(100, 5, 20), ...byContent };
    expect(outputs('uniformity-of-dosage-units', both)).toMatchObject({ verdict: 'pass', stage2: { unitCount: 30 } });
  });
  test('golden: limits of a monograph of its own are used', () => {
    const strict = { contents_pct: spread(100, 5), ...byContent, acceptanceLimit_pct: 10 };
    expect(outputs('uniformity-of-dosage-units', strict)).toMatchObject({ verdict: 'cannot-tell' });
  });
  test('golden: by mass the mean content is the assay', () => {
    const masses = { gross_mg: spread(476, 10), shells_mg: spread(76, 0), assay_pct: 99 };
    const found = outputs('uniformity-of-dosage-units-by-mass', {
      ...{ ...masses, rounding: 'halfUp', ...release('dosage-units-by-mass') },
    });
    expect(found['verdict']).toBe('pass');
    expect((found['stage1'] as { mean_pct: number }).mean_pct).toBeCloseTo(99, 10);
  });
  test('golden: uniformity of content says that it is from memory', () => {
    const found = outputs('uniformity-of-content', {
      contents_pct: spread(100, 1),
      ...release('uniformity-of-content'),
    });
    expect(found).toMatchObject({ verdict: 'pass', mean_pct: 100, outsideInner: [], outsideOuter: [] });
    expect(found['lookInto']).toMatch(/2\.9\.6/);
  });
  test('refuses: several loads, a trial, another route -> cannot-tell', () => {
    const several = { gross_mg: spread(300, 1, 20), ...release('supplement-mass'), loadCount: 2 };
    expect(outputs('supplement-mass', several)).toMatchObject({ verdict: 'cannot-tell', reasons: ['several-loads'] });
    const trial = { contents_pct: spread(100, 1), ...byContent, purpose: 'trial', route: ['uniformity-of-mass'] };
    expect(outputs('uniformity-of-dosage-units', trial)).toMatchObject({
      ...{ verdict: 'cannot-tell', reasons: ['trial-data', 'test-not-in-dossier'], next: 'none' },
    });
  });
  test('refuses: a number of units that no table has, with the text to look into', () => {
    const found = outputs('uniformity-of-dosage-units', { contents_pct: spread(100, 1, 100), ...byContent });
    expect(found).toMatchObject({ verdict: 'cannot-tell', reasons: ['not-ten-contents'] });
    expect(found['lookInto']).toMatch(/2\.9\.47/);
  });
  test('refuses: NaN among the contents, no purpose, no rounding', () => {
    const contents_pct = [NaN, ...spread(100, 1, 9)];
    expect(computed('uniformity-of-dosage-units', { contents_pct, ...byContent })).toMatchObject({ ok: false });
    const { rounding, ...withoutRounding } = byContent;
    expect(rounding).toBe('unrounded');
    const given = { contents_pct: spread(100, 1), ...withoutRounding };
    expect(computed('uniformity-of-dosage-units', given)).toMatchObject({ ok: false });
  });
});

describe('probabilities and assurance', () => {
  test('golden: operating characteristic at mean 100 and 96, sd 6', () => {
    // 2e7 simulated batches in another program: .972 and .686.
    const found = outputs('dosage-units-operating-characteristic', { means_pct: [100, 96], sds_pct: [6] });
    const [row] = found['rows'] as { pass_frac: number[] }[];
    expect(row!.pass_frac[0]).toBeCloseTo(0.972, 3);
    expect(row!.pass_frac[1]).toBeCloseTo(0.686, 3);
  });
  test('golden: simulated kinds: perfect fills, 1 % missing, pass with (1 - 0.01)^10', () => {
    const kinds = [
      { mean_pct: 100, sd_pct: 0, share_ratio: 99 },
      { mean_pct: 0, sd_pct: 0, share_ratio: 1 },
    ];
    const found = outputs('dosage-units-simulated', { kinds, testCount: 100000, seed: 2 });
    const deviation = Math.abs(Number(found['pass_frac']) - 0.99 ** 10);
    expect(deviation).toBeLessThan(4 * Number(found['standardError_frac']));
  });
  test('golden: by hand, places 99, 101 and 100, 104: mean squares 4 between and 5 within', () => {
    const places = [{ contents_pct: [99, 101] }, { contents_pct: [100, 104] }];
    const found = outputs('assurance-of-places', { places, confidence_frac: 0.95 });
    expect(found['mean_pct']).toBe(101);
    expect(found['meanSquareBetween_pct2']).toBeCloseTo(4, 12);
    expect(found['meanSquareWithin_pct2']).toBeCloseTo(5, 12);
    expect(Number(found['totalSd_pct']) ** 2).toBeCloseTo(4.5, 12);
  });
  test('limit: a sample mean that no spread saves has a row without values', () => {
    const plan = { means_pct: [80, 100], sampleCount: 10, confidence_frac: 0.95, coverage_frac: 0.95 };
    const [none, some] = outputs('acceptance-limits', plan)['rows'] as object[];
    expect(none).toEqual({ mean_pct: 80 });
    expect(Object.keys(some!)).toEqual(['mean_pct', 'boundSd_pct', 'exactSd_pct']);
  });
  test('refuses: places of unequal size', () => {
    const places = [{ contents_pct: [100, 101] }, { contents_pct: [100] }];
    expect(() => computed('assurance-of-places', { places, confidence_frac: 0.9 })).toThrow('out-of-range');
  });
});
