import { describe, expect, test } from 'vitest';
import { computeEntry } from '#catalogue';
import { samplingEntries } from './entries.ts';

function computed(id: string, inputs: Record<string, unknown>) {
  const entry = samplingEntries.find((one) => one.id === `statistics.${id}`);
  if (!entry) throw new Error(id);
  return computeEntry(entry, inputs);
}

const PLAN = { lotSize: 20000, level: 'II', aql: '0.65', inspection: 'normal' };
const SERIES = { lotSizes: [2000], level: 'II', aql: '1.0', reducedPermitted: true };
const PRODUCER = { producerQuality_frac: 0.01, producerRisk_frac: 0.05 };

describe('sampling entries', () => {
  test('golden: ISO 2859-1 Table 2-A: lot 20000, level II, AQL 0.65: M, 315, 5/6', () => {
    expect(computed('attribute-plan', PLAN)).toMatchObject({
      outputs: { codeLetter: 'M', sampleSize: 315, acceptanceNumber: 5, rejectionNumber: 6, inspectAll: false },
    });
  });
  test('golden: MIL-STD-105E Table III-A: L, AQL 0.65: 125/125, 1/4 and 4/5; letter A has single plans only', () => {
    const lot = { ...PLAN, lotSize: 10000 };
    expect(computed('double-plan', lot)).toMatchObject({
      outputs: { kind: 'double', firstSampleSize: 125, firstAcceptanceNumber: 1, secondRejectionNumber: 5 },
    });
    const small = computed('double-plan', { ...PLAN, lotSize: 8, aql: '6.5' });
    expect(small).toMatchObject({ outputs: { kind: 'single', firstSampleSize: 2, firstAcceptanceNumber: 0 } });
    expect(small.ok && 'secondSampleSize' in small.outputs).toBe(false);
  });
  test('golden: ISO 2859-1, 9.3: lot by lot, sizes given once or for each lot, a lot that was not steady', () => {
    const counts = [4, 0, 4, 0];
    const found = computed('lot-history', { ...SERIES, nonconformingCounts: counts });
    expect(found).toMatchObject({
      outputs: {
        accepted: [false, true, false, true],
        inspections: ['normal', 'normal', 'normal', 'tightened'],
        reasons: ['unchanged', 'unchanged', 'two-of-five-not-accepted', 'unchanged'],
        next: 'tightened',
      },
    });
    const each = { ...SERIES, lotSizes: [2000, 2000, 2000, 2000], nonconformingCounts: counts };
    expect(computed('lot-history', each)).toEqual(found);
    const last = computed('lot-history', { ...SERIES, nonconformingCounts: Array(11).fill(0), unsteadyLots: [11] });
    expect(last).toMatchObject({ outputs: { next: 'normal' } });
  });
  test('refuses: as many sizes as there are not lots; an unsteady lot that is not there', () => {
    const given = { ...SERIES, lotSizes: [2000, 2000], nonconformingCounts: [0, 0, 0] };
    expect(() => computed('lot-history', given)).toThrow('out-of-range');
    expect(() => computed('lot-history', { ...given, lotSizes: [2000], unsteadyLots: [4] })).toThrow('out-of-range');
  });
  test('golden: by hand 1 - 0.95^2 of the second lot and (1 - p)^n: curves and average outgoing quality as lists', () => {
    const single = { sampleSize: 10, acceptanceNumber: 0, qualities_ratio: [0, 0.1], law: 'binomial', lotSize: 100 };
    const found = computed('attribute-acceptance', single);
    expect(found.ok && found.outputs['accepted_frac']).toEqual([1, expect.closeTo(0.9 ** 10, 12)]);
    expect(found.ok && found.outputs['outgoing_ratio']).toEqual([0, expect.closeTo(0.1 * 0.9 ** 10 * 0.9, 12)]);
    const { lotSize, ...large } = single;
    expect(lotSize).toBe(100);
    const left = computed('attribute-acceptance', large);
    expect(left.ok && left.outputs['outgoing_ratio']).toEqual([0, expect.closeTo(0.1 * 0.9 ** 10, 12)]);
  });
  test('golden: one bad of 10, 5 looked at: 0.5; 50 per cent at most needs those 5', () => {
    const lot = { lotSize: 10, nonconformingCount: 1 };
    expect(computed('attribute-acceptance-in-lot', { ...lot, sampleSize: 5, acceptanceNumber: 0 })).toMatchObject({
      outputs: { accepted_frac: expect.closeTo(0.5, 12) as number },
    });
    expect(computed('zero-acceptance-size', { ...lot, acceptedAtMost_frac: 0.5 })).toMatchObject({
      outputs: { sampleSize: 5, seriesSampleSize: 7 },
    });
  });
  test('golden: designs: Kiermeier (2008) 80/7 (from memory); known sd 19 by hand', () => {
    const points = { producerQuality_frac: 0.05, producerRisk_frac: 0.05, consumerQuality_frac: 0.15 };
    expect(computed('attribute-design', { ...points, consumerRisk_frac: 0.075, law: 'binomial' })).toMatchObject({
      outputs: { sampleSize: 80, acceptanceNumber: 7 },
    });
    const known = { ...PRODUCER, consumerQuality_frac: 0.05, consumerRisk_frac: 0.1, sd: 'known' };
    expect(computed('variables-design', known)).toMatchObject({ outputs: { sampleSize: 19 } });
  });
  test('golden: MIL-STD-414 Table B-1: letter F, AQL 1: n 10, k 1.72; ISO 3951 is named, not guessed', () => {
    const wanted = { standard: 'MIL-STD-414', codeLetter: 'F', aql: '1', inspection: 'normal' };
    expect(computed('variables-table-plan', wanted)).toMatchObject({
      outputs: { kind: 'plan', planLetter: 'F', sampleSize: 10, factor_ratio: 1.72 },
    });
    const iso = computed('variables-table-plan', { ...wanted, standard: 'ISO 3951-1' });
    expect(iso).toMatchObject({ outputs: { kind: 'look-up' } });
    expect(iso.ok && iso.outputs['lookInto']).toContain('ISO 3951-1');
  });
  test('golden: MIL-STD-414 example B-1 (from memory): accepted with index 1.59 against 1.53', () => {
    const sample = { values_data: [197, 188, 184, 205, 201], sampleSize: 5, factor_ratio: 1.53 };
    expect(computed('variables-verdict', { ...sample, limit_data: 209, side: 'upper' })).toMatchObject({
      outputs: { verdict: 'pass', reasons: [], qualityIndex_ratio: expect.closeTo(1.59, 2) as number },
    });
    const four = { ...sample, values_data: [197, 188, 184, 205], limit_data: 209, side: 'upper', knownSd_data: 8 };
    expect(computed('variables-verdict', four)).toEqual({
      ok: true,
      outputs: { verdict: 'cannot-tell', reasons: ['not-the-sample-size'] },
    });
  });
  test.each([
    ['attribute-plan', { ...PLAN, lotSize: NaN }],
    ['attribute-plan', { ...PLAN, aql: '0.7' }],
    ['lot-history', { ...SERIES, nonconformingCounts: [NaN] }],
    ['attribute-acceptance', { sampleSize: 10, acceptanceNumber: 0, qualities_ratio: [NaN], law: 'binomial' }],
    ['variables-acceptance', { sampleSize: 10, factor_ratio: NaN, sd: 'known', qualities_frac: [0.1] }],
    ['variables-verdict', { values_data: [1, NaN], sampleSize: 2, factor_ratio: 1, limit_data: 3, side: 'upper' }],
  ])('refuses: %s with %o', (id, inputs) => {
    expect(computed(id, inputs).ok).toBe(false);
  });
});
