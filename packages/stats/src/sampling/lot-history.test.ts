import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SeriesOfLots } from '#sampling';
import { lotHistory } from '#sampling';

type Terms = Partial<Omit<SeriesOfLots, 'lots'>>;
const K: Omit<SeriesOfLots, 'lots'> = { level: 'II', aql: '1.0', reducedPermitted: true };
/** Lots of 2000, code letter K, 125 units: Ac 3 normal, 2 tightened (ISO 2859-1 Tables 2-A, 2-B). */
const series = (counts: readonly number[], terms: Terms = {}) =>
  lotHistory({ ...K, ...terms, lots: counts.map((nonconformingCount) => ({ lotSize: 2000, nonconformingCount })) });
const times = (n: number, count: number): number[] => Array<number>(n).fill(count);

describe('lotHistory by ISO 2859-1', () => {
  test('golden: 9.3.3.2: Ac 3 scores 3 a lot while the next smaller AQL (Ac 2) would accept; reduced at 30', () => {
    const { records, next } = series([...times(9, 2), 2]);
    expect(records.map((record) => record.score)).toEqual([3, 6, 9, 12, 15, 18, 21, 24, 27, 30]);
    expect(records.at(-1)).toMatchObject({ before: 'normal', after: 'reduced', reason: 'score-reached' });
    expect(next).toBe('reduced');
    expect(series([2, 2, 3, 2]).records.map((record) => record.score)).toEqual([3, 6, 0, 3]);
  });
  test('golden: 9.3.3.2: Ac 0 and 1 score 2 for every accepted lot', () => {
    expect(series([0, 0, 1, 0], { aql: '0.10' }).records.map((record) => record.score)).toEqual([2, 4, 0, 2]);
    expect(series([1, 1, 2, 1], { aql: '0.40' }).records.map((record) => record.score)).toEqual([2, 4, 0, 2]);
  });
  test('golden: 9.3.1: 2 of 5 not accepted -> tightened; the sixth lot is outside the window', () => {
    expect(series([4, 0, 0, 0, 4]).records.at(-1)).toMatchObject({
      ...{ after: 'tightened', reason: 'two-of-five-not-accepted', score: 0 },
    });
    expect(series([4, 0, 0, 0, 0, 4]).next).toBe('normal');
  });
  test('golden: 9.3.2 and 9.4: 5 accepted in a row -> normal; 5 not accepted in all -> discontinued', () => {
    const back = series([4, 4, ...times(5, 2), 4]);
    expect(back.records[6]).toMatchObject({ before: 'tightened', after: 'normal', reason: 'five-accepted-in-a-row' });
    expect(back.next).toBe('normal');
    const stopped = series([4, 4, 3, 2, 3, 2, 3, 2, 3, 2, 3, 0, 0]);
    expect(stopped).toMatchObject({ next: 'discontinued', notJudgedCount: 2 });
    expect(stopped.records.at(-1)!.reason).toBe('five-not-accepted-on-tightened');
  });
  test('golden: 9.3.4: reduced ends with a lot not accepted, or with production that is not steady', () => {
    expect(series([...times(10, 0), 2, 3]).records.at(-1)).toMatchObject({
      ...{ before: 'reduced', accepted: false, after: 'normal', score: 0, reason: 'not-accepted-on-reduced' },
    });
    const lots = [...times(10, 0), 0].map((nonconformingCount, i) => ({
      ...{ lotSize: 2000, nonconformingCount, isSteady: i < 10 },
    }));
    expect(lotHistory({ ...K, lots }).records.at(-1)).toMatchObject({
      ...{ accepted: true, after: 'normal', reason: 'production-not-steady' },
    });
  });
  test('limit: without consent or with production that is not steady the score alone does not reduce', () => {
    expect(series(times(12, 0), { reducedPermitted: false })).toMatchObject({ next: 'normal' });
    expect(series(times(12, 0), { reducedPermitted: false }).records.at(-1)!.reason).toBe('reduced-not-permitted');
    const lots = times(12, 0).map((nonconformingCount) => ({ lotSize: 2000, nonconformingCount, isSteady: false }));
    expect(lotHistory({ ...K, lots }).records.at(-1)).toMatchObject({
      ...{ after: 'normal', reason: 'production-not-steady' },
    });
  });
});

describe('lotHistory by MIL-STD-105E', () => {
  const scheme = 'MIL-STD-105E';
  test('golden: 4.7 (from memory): reduced after 10 accepted within the limit number, never without it', () => {
    expect(series(times(12, 1), { scheme }).records.at(-1)).toMatchObject({
      ...{ after: 'normal', reason: 'limit-number-needed', score: 0 },
    });
    expect(series(times(10, 1), { scheme, limitNumber: 10 }).next).toBe('reduced');
    expect(series(times(10, 1), { scheme, limitNumber: 9 }).next).toBe('normal');
  });
  test('golden: Table II-C, K, AQL 1.0 is 1/4: counts 2 and 3 are accepted but end reduced inspection', () => {
    const record = series([...times(10, 0), 1, 3], { scheme, limitNumber: 10 }).records.at(-1);
    expect(record).toMatchObject({ before: 'reduced', accepted: true, after: 'normal' });
    expect(record!.reason).toBe('between-ac-and-re-on-reduced');
  });
  test('golden: 10 lots on tightened inspection (from memory) -> discontinued', () => {
    const counts = [4, 4, 0, 0, 0, 3, 0, 0, 0, 3, 0, 0, 0];
    expect(series(counts, { scheme })).toMatchObject({ next: 'discontinued', notJudgedCount: 1 });
    expect(series(counts.slice(0, -2), { scheme }).next).toBe('tightened');
  });
});

describe('lotHistory', () => {
  test('property: append-only: a shorter series has the records of the longer one, and each begins where the last ended', () => {
    const counts = fc.array(fc.nat(5), { maxLength: 60 });
    const scheme = fc.constantFrom('ISO 2859-1', 'MIL-STD-105E');
    fc.assert(
      fc.property(counts, scheme, fc.nat(60), (all, which, cut) => {
        const terms = { scheme: which, limitNumber: 12 } as const;
        const { records, next } = series(Object.freeze(all), terms);
        expect(series(all.slice(0, cut), terms).records).toEqual(records.slice(0, cut));
        for (const [i, record] of records.entries()) {
          expect(record.before).toBe(records[i - 1]?.after ?? 'normal');
          expect(record.accepted).toBe(all[i]! < record.plan.re);
          if (record.after !== record.before) expect(record.reason).not.toBe('unchanged');
        }
        expect(next).toBe(records.at(-1)?.after ?? 'normal');
      }),
      { seed: 52 },
    );
  });
  test('limit: no lot yet: normal inspection', () => {
    expect(series([])).toEqual({ records: [], next: 'normal', notJudgedCount: 0 });
  });
  test.each([NaN, -1, 1.5, Infinity])('refuses: a count of %s', (count) => {
    expect(() => series([0, count])).toThrow(/nonconformingCount/);
  });
  test('refuses: a limit number that is none', () => {
    expect(() => series([0], { limitNumber: NaN })).toThrow('not-finite: limitNumber');
  });
});
