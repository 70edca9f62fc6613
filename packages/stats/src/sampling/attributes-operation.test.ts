import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  attributesDesign,
  averageOutgoingQuality,
  doublePlanOperation,
  probabilityOfAcceptance,
  probabilityOfAcceptanceInLot,
  qualityAtAcceptance,
  zeroAcceptanceSize,
} from '#sampling';

const law = fc.constantFrom('binomial', 'poisson');
const plan = fc.record({ n: fc.integer({ min: 1, max: 400 }), part: fc.double({ min: 0, max: 1, noNaN: true }), law });
const acOf = ({ n, part }: { n: number; part: number }): number => Math.floor(part * Math.min(n - 1, 40));
const quality = fc.double({ min: 1e-6, max: 0.6, noNaN: true });

/** C(N - n, D) / C(N, D) as a plain product: shares nothing with the hypergeometric law of distributions. */
function noneFound({ lotSize, bad, n }: { lotSize: number; bad: number; n: number }): number {
  let chance = 1;
  for (let i = 0; i < bad; i++) chance *= Math.max(0, lotSize - n - i) / (lotSize - i);
  return chance;
}

describe('probabilityOfAcceptance', () => {
  // ISO 2859-1:1999 Table 10-K-1 = MIL-STD-105E Table X-K-1 (from memory: 5.35 for AQL 1.0 at Pa 10 %), Poisson law.
  test('golden: K, AQL 1.0 (125, Ac 3): limiting quality 5.35 per cent at Pa 0.10', () => {
    const at = qualityAtAcceptance({ n: 125, ac: 3, accepted: 0.1, law: 'poisson' });
    expect(100 * at).toBeCloseTo(5.35, 1.7);
    expect(probabilityOfAcceptance({ n: 125, ac: 3, quality: at, law: 'poisson' })).toBeCloseTo(0.1, 12);
  });
  test('property: falls with the quality, rises with Ac, and its inverse leads back', () => {
    const chance = fc.double({ min: 0.001, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(plan, quality, chance, (given, p, accepted) => {
        const base = { n: given.n, ac: acOf(given), law: given.law } as const;
        const here = probabilityOfAcceptance({ ...base, quality: p });
        expect(probabilityOfAcceptance({ ...base, quality: p * 1.1 })).toBeLessThanOrEqual(here + 1e-14);
        expect(probabilityOfAcceptance({ ...base, ac: base.ac + 1, quality: p })).toBeGreaterThanOrEqual(here - 1e-14);
        const at = qualityAtAcceptance({ ...base, accepted });
        if (at < 1) expect(probabilityOfAcceptance({ ...base, quality: at })).toBeCloseTo(accepted, 9);
      }),
      { seed: 61 },
    );
  });
  test('limit: nothing wrong is always accepted, everything wrong never', () => {
    expect(probabilityOfAcceptance({ n: 50, ac: 2, quality: 0, law: 'binomial' })).toBe(1);
    expect(probabilityOfAcceptance({ n: 50, ac: 2, quality: 1, law: 'binomial' })).toBe(0);
    expect(probabilityOfAcceptanceInLot({ lotSize: 100, nonconformingCount: 0, n: 20, ac: 0 })).toBe(1);
    expect(probabilityOfAcceptanceInLot({ lotSize: 100, nonconformingCount: 81, n: 20, ac: 0 })).toBe(0);
  });
  test.each([
    [{ quality: NaN }, 'not-finite: quality'],
    [{ quality: 1.5 }, 'out-of-range: quality'],
    [{ n: 0 }, 'out-of-range: n=0'],
    [{ ac: -1 }, 'out-of-range: ac=-1'],
    [{ ac: 0.5 }, 'not-whole: ac'],
  ])('refuses: %o -> %s', (part, message) => {
    const given = { n: 50, ac: 1, quality: 0.01, law: 'binomial' as const, ...part };
    expect(() => probabilityOfAcceptance(given)).toThrow(message);
  });
  test('refuses: a sample above the lot, a plan that accepts all', () => {
    const lot = { lotSize: 100, nonconformingCount: 5, n: 101, ac: 0 };
    expect(() => probabilityOfAcceptanceInLot(lot)).toThrow('out-of-range: n=101');
    expect(() => qualityAtAcceptance({ n: 5, ac: 5, accepted: 0.5, law: 'binomial' })).toThrow('out-of-range: ac=5');
  });
});

describe('probabilityOfAcceptanceInLot', () => {
  test('property: a large lot behaves like a series', () => {
    fc.assert(
      fc.property(plan, fc.integer({ min: 1, max: 400 }), (given, perMille) => {
        const ac = acOf(given);
        const lot = { lotSize: 1e8, nonconformingCount: perMille * 1e5, n: given.n, ac };
        const series = { n: given.n, ac, quality: perMille / 1000, law: 'binomial' } as const;
        expect(probabilityOfAcceptanceInLot(lot)).toBeCloseTo(probabilityOfAcceptance(series), 4);
      }),
      { seed: 62, numRuns: 50 },
    );
  });
});

describe('averageOutgoingQuality', () => {
  test('limit: inspecting the whole lot leaves nothing; a large lot Pa p', () => {
    const given = { n: 80, ac: 2, quality: 0.02, law: 'binomial' } as const;
    expect(averageOutgoingQuality({ ...given, lotSize: 80 })).toBe(0);
    expect(averageOutgoingQuality(given)).toBeCloseTo(0.02 * probabilityOfAcceptance(given), 15);
    expect(() => averageOutgoingQuality({ ...given, lotSize: 79 })).toThrow('out-of-range: lotSize');
  });
  test('golden: Dodge-Romig: AOQL y / n of a large lot, y = 0.3679 for c = 0, 0.840 for c = 1, 1.371 for c = 2 (from memory)', () => {
    for (const [ac, y] of [
      [0, 0.3679],
      [1, 0.84],
      [2, 1.371],
    ] as const) {
      const grid = Array.from({ length: 400 }, (_, i) => (i + 1) / 1e5);
      const worst = grid.map((q) => averageOutgoingQuality({ n: 1000, ac, quality: q, law: 'poisson' }));
      expect(1000 * Math.max(...worst)).toBeCloseTo(y, 3);
    }
  });
});

describe('zeroAcceptanceSize', () => {
  test('golden: an exact ratio counts as met: 1 bad of 100, at most 5 per cent: (100 - 95) / 100', () => {
    const found = zeroAcceptanceSize({ lotSize: 100, nonconformingCount: 1, acceptedAtMost: 0.05 });
    expect(found.n).toBe(95);
    expect(found.accepted).toBeCloseTo(0.05, 14);
    expect(found.acceptedOneLess).toBeCloseTo(0.06, 14);
    expect(found.nOfSeries).toBe(299);
  });
  test('property: the smallest n of a plain product', () => {
    const lot = fc.record({
      lotSize: fc.integer({ min: 1, max: 3000 }),
      part: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    const limit = fc.constantFrom(0.01, 0.05, 0.1, 0.5);
    fc.assert(
      fc.property(lot, limit, ({ lotSize, part }, acceptedAtMost) => {
        const bad = 1 + Math.floor(part * (lotSize - 1));
        const { n, accepted } = zeroAcceptanceSize({ lotSize, nonconformingCount: bad, acceptedAtMost });
        expect(accepted).toBeCloseTo(noneFound({ lotSize, bad, n }), 11);
        expect(noneFound({ lotSize, bad, n })).toBeLessThanOrEqual(acceptedAtMost * (1 + 1e-9));
        expect(noneFound({ lotSize, bad, n: n - 1 })).toBeGreaterThan(acceptedAtMost * (1 + 1e-12));
      }),
      { seed: 63 },
    );
  });
  test('limit: every unit bad needs one; a lot of one', () => {
    const every = zeroAcceptanceSize({ lotSize: 50, nonconformingCount: 50, acceptedAtMost: 0.05 });
    expect(every).toEqual({ n: 1, accepted: 0, acceptedOneLess: 1, nOfSeries: 1 });
    expect(zeroAcceptanceSize({ lotSize: 1, nonconformingCount: 1, acceptedAtMost: 0.05 }).n).toBe(1);
  });
  test.each([
    [{ nonconformingCount: 0 }, 'out-of-range: nonconformingCount=0'],
    [{ nonconformingCount: 101 }, 'out-of-range: nonconformingCount=101'],
    [{ acceptedAtMost: 0 }, 'out-of-range: acceptedAtMost'],
    [{ acceptedAtMost: NaN }, 'not-finite: acceptedAtMost'],
    [{ lotSize: 10.5 }, 'not-whole: lotSize'],
  ])('refuses: %o -> %s', (part, message) => {
    const given = { lotSize: 100, nonconformingCount: 5, acceptedAtMost: 0.05, ...part };
    expect(() => zeroAcceptanceSize(given)).toThrow(message);
  });
});

describe('doublePlanOperation', () => {
  const K = { n1: 80, n2: 80, ac1: 1, re1: 4, ac2: 4, re2: 5, law: 'binomial' } as const;
  test('property: one sample decides -> the single plan; averages between first and both', () => {
    fc.assert(
      fc.property(plan, quality, (given, p) => {
        const ac1 = acOf(given);
        const single = { ...{ n1: given.n, n2: given.n, ac1, re1: ac1 + 1, ac2: ac1, re2: ac1 + 1 }, law: given.law };
        const found = doublePlanOperation({ ...single, quality: p });
        const alone = probabilityOfAcceptance({ n: given.n, ac: ac1, quality: p, law: given.law });
        expect(found).toMatchObject({ accepted: alone, decidedAtFirst: 1, averageSampleCount: given.n });
        const double = doublePlanOperation({ ...K, quality: p, law: given.law });
        expect(double.averageSampleCount).toBeGreaterThanOrEqual(80);
        expect(double.averageSampleCount).toBeLessThanOrEqual(160);
        expect(double.averageOutgoingQuality).toBeCloseTo(p * double.accepted, 14);
      }),
      { seed: 64 },
    );
  });
  test('limit: nothing wrong is accepted on the first sample; in a finite lot what was inspected is taken out', () => {
    const found = doublePlanOperation({ ...K, quality: 0, lotSize: 1000 });
    expect(found).toEqual({ accepted: 1, decidedAtFirst: 1, averageSampleCount: 80, averageOutgoingQuality: 0 });
    const { accepted, averageOutgoingQuality: left } = doublePlanOperation({ ...K, quality: 0.02, lotSize: 160 });
    expect(left).toBeLessThan(0.5 * 0.02 * accepted);
  });
  test.each([
    [{ re1: 1 }, 'out-of-range: re1=1'],
    [{ re2: 4 }, 'out-of-range: re2=4'],
    [{ quality: NaN }, 'not-finite: quality'],
    [{ lotSize: 159 }, 'out-of-range: lotSize=159'],
  ])('refuses: %o -> %s', (part, message) => {
    expect(() => doublePlanOperation({ ...K, quality: 0.01, ...part })).toThrow(message);
  });
});

describe('attributesDesign', () => {
  // A. Kiermeier (2008), J. Statist. Software 26(6): 0.05 at 0.95, 0.15 at 0.075 -> n 80, c 7 (from memory).
  test('golden: 5 per cent accepted with 0.95, 15 per cent with 0.075: n 80, Ac 7', () => {
    const points = { producerQuality: 0.05, producerRisk: 0.05, consumerQuality: 0.15, consumerRisk: 0.075 };
    expect(attributesDesign({ ...points, law: 'binomial' })).toMatchObject({ n: 80, ac: 7 });
  });
  test('property: both risks kept, one unit less or one count less breaks one', () => {
    const points = fc.record({
      producerQuality: fc.double({ min: 0.002, max: 0.05, noNaN: true }),
      ratio: fc.double({ min: 2, max: 10, noNaN: true }),
      law,
    });
    fc.assert(
      fc.property(points, ({ producerQuality, ratio, law: which }) => {
        const consumerQuality = producerQuality * ratio;
        const risks = { producerRisk: 0.05, consumerRisk: 0.1 };
        const { n, ac } = attributesDesign({ ...risks, producerQuality, consumerQuality, law: which });
        const at = (size: number, p: number, count = ac) =>
          count < 0 ? 0 : probabilityOfAcceptance({ n: size, ac: count, quality: p, law: which });
        expect(at(n, consumerQuality)).toBeLessThanOrEqual(0.1 * (1 + 1e-9));
        expect(at(n, producerQuality)).toBeGreaterThanOrEqual(0.95 - 1e-9);
        if (n > 1) expect(at(n - 1, consumerQuality)).toBeGreaterThan(0.1);
        if (ac > 0) expect(at(n, producerQuality, ac - 1)).toBeLessThan(at(n, producerQuality));
      }),
      { seed: 65, numRuns: 40 },
    );
  });
  test('refuses: points the wrong way round, or too close for a million units', () => {
    const points = { producerQuality: 0.05, producerRisk: 0.05, consumerQuality: 0.04, consumerRisk: 0.1 };
    expect(() => attributesDesign({ ...points, law: 'binomial' })).toThrow('out-of-range: consumerQuality');
  });
});
