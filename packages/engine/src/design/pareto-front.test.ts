import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Candidate, Merits } from './candidate.ts';
import { paretoFront } from './pareto-front.ts';
import { ranking } from './ranking.ts';

const MERITS: Merits = {
  capsulesOutside_frac: 0.01,
  sampleMeansOutside_frac: 0.09,
  unit_pct: 2.2,
  volumeMargin_frac: 0.1,
  adjusterMargin_frac: 0.3,
  speed_per_h: 50_000,
  partsToChangeCount: 1,
  onSpringCount: 0,
};
const candidate = (merits: Partial<Merits>, disc = 'D1'): Candidate =>
  ({ size: '0', settings: { parts: { disc }, values: {} }, merits: { ...MERITS, ...merits } }) as unknown as Candidate;

const share = fc.double({ min: 0, max: 1, noNaN: true });
const anyCandidate = fc
  .record({
    sampleMeansOutside_frac: share,
    volumeMargin_frac: share,
    adjusterMargin_frac: share,
    partsToChangeCount: fc.integer({ min: 0, max: 3 }),
  })
  .map((merits) => candidate(merits));

describe('paretoFront', () => {
  test('golden: worse in one and better in none is left behind; better in one stays (definition)', () => {
    const [good, worse, other] = [
      candidate({}),
      candidate({ partsToChangeCount: 2 }),
      candidate({ partsToChangeCount: 2, volumeMargin_frac: 0.2 }),
    ];
    expect(paretoFront([good, worse, other])).toEqual([good, other]);
  });
  test('property: never empty, and nobody outside it beats anybody inside', () => {
    fc.assert(
      fc.property(fc.array(anyCandidate, { minLength: 1, maxLength: 12 }), (all) => {
        const front = paretoFront(all);
        expect(front.length).toBeGreaterThan(0);
        expect(paretoFront(front)).toEqual(front);
      }),
      { seed: 1 },
    );
  });
  test('limit: differences that do not count leave both', () => {
    const twins = [candidate({ sampleMeansOutside_frac: 0.0901 }), candidate({ sampleMeansOutside_frac: 0.0902 })];
    expect(paretoFront(twins)).toHaveLength(2);
  });
});

describe('ranking', () => {
  // Order of the design reference: sample means outside, stations on spring, parts to change, margins, speed.
  test.each([
    [{ sampleMeansOutside_frac: 0.08, onSpringCount: 3 }, {}, 'sample-means-outside'],
    [{ onSpringCount: 0, partsToChangeCount: 3 }, { onSpringCount: 1 }, 'stations-on-spring'],
    [{ partsToChangeCount: 0, adjusterMargin_frac: 0 }, {}, 'parts-to-change'],
    [{ adjusterMargin_frac: 0.4, volumeMargin_frac: 0 }, {}, 'adjuster-margin'],
    [{ volumeMargin_frac: 0.2, speed_per_h: 1 }, {}, 'volume-margin'],
    [{ speed_per_h: 60_000 }, {}, 'speed'],
  ] as const)('golden: %o comes before %o by %s', (better, worse, by) => {
    expect(ranking(candidate(better), candidate(worse))).toMatchObject({ by });
    expect(ranking(candidate(better), candidate(worse)).order).toBeLessThan(0);
    expect(ranking(candidate(worse), candidate(better)).order).toBeGreaterThan(0);
  });
  test('limit: equal in all that counts: by name, the same way round every time', () => {
    expect(ranking(candidate({}, 'D1'), candidate({}, 'D2'))).toEqual({ order: -1, by: 'name' });
  });
});
