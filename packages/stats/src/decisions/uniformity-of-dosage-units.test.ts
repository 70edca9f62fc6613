import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DosageUnitSample } from '#decisions';
import { acceptanceValueOfUnits, uniformityOfDosageUnits } from '#decisions';

const conduct = { route: ['dosage-units-by-content'], purpose: 'release' } as const;
const spread = (mean: number, step: number, count = 10): number[] =>
  Array.from({ length: count }, (_, i) => mean + (i % 2 === 0 ? step : -step));
const judged = (sample: Partial<DosageUnitSample>) =>
  uniformityOfDosageUnits({ contents: spread(100, 1), rounding: 'unrounded', conduct, ...sample });

describe('acceptanceValueOfUnits', () => {
  test('golden: by hand, 10 units at 95 and 105: s = sqrt(250/9), M = 100', () => {
    const stage = acceptanceValueOfUnits({ contents: spread(100, 5) });
    expect(stage).toMatchObject({ n: 10, mean: 100, reference: 100, referenceCase: 'inside', factor: 2.4 });
    expect(stage.sd).toBeCloseTo(Math.sqrt(250 / 9), 12);
    expect(stage.acceptanceValue).toBeCloseTo(2.4 * Math.sqrt(250 / 9), 12);
    expect(stage.roundedAcceptanceValue).toBe(12.6);
  });
  test('golden: limits of single units as printed in the USP questions and answers: 73.875 to 126.875', () => {
    const low = acceptanceValueOfUnits({ contents: spread(90, 1) });
    const high = acceptanceValueOfUnits({ contents: spread(110, 1) });
    expect([low.lowestUnit, low.highestUnit]).toEqual([73.875, 123.125]);
    expect([high.lowestUnit, high.highestUnit]).toEqual([76.125, 126.875]);
  });
  test('golden: who lies outside, counted from 1; on the limit is inside', () => {
    const contents = [...spread(98.5, 0, 28), 73.875, 73.874];
    const { outside, reference } = acceptanceValueOfUnits({ contents });
    expect(reference).toBe(98.5);
    expect(outside).toEqual([{ unit: 30, content: 73.874, side: 'below' }]);
  });
  test('property: neither the order nor a common shift inside the zone changes the acceptance value', () => {
    const units = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(units, (deviations) => {
        const of = (mean: number, list: readonly number[]): number =>
          acceptanceValueOfUnits({ contents: list.map((d) => mean + d), target: 106 }).acceptanceValue;
        expect(of(102, deviations.toReversed())).toBeCloseTo(of(102, deviations), 10);
        expect(of(104, deviations)).toBeCloseTo(of(102, deviations), 10);
      }),
      { seed: 51 },
    );
  });
  test.each([
    [{ contents: spread(100, 1, 12) }, 'sample-size: n=12'],
    [{ contents: [] }, 'sample-size: n=0'],
    [{ contents: [NaN, ...spread(100, 1, 9)] }, 'not-finite: content'],
    [{ contents: spread(100, 1), target: NaN }, 'not-finite: target'],
    [{ contents: spread(100, 1), limits: { acceptanceValue: NaN, unitDeviation_pct: 25 } }, 'not-finite'],
    [{ contents: spread(100, 1), limits: { acceptanceValue: 15, unitDeviation_pct: 0 } }, 'out-of-range'],
  ])('refuses: %o -> %s', (input, message) => {
    expect(() => acceptanceValueOfUnits(input)).toThrow(message);
  });
});

describe('uniformityOfDosageUnits', () => {
  test('golden: stage 1 passes, and further units are not looked at', () => {
    expect(judged({})).toMatchObject({ verdict: 'pass', reasons: [], next: 'none' });
    const both = judged({ furtherContents: spread(100, 40, 20) });
    expect(both).toMatchObject({ verdict: 'pass', reasons: ['further-units-not-called-for'] });
    expect(both.numbers!.stage2).toBeUndefined();
  });
  test('golden: a failed stage 1 asks for 20 more, whose 30 together decide', () => {
    const contents = spread(100, 7);
    expect(judged({ contents })).toMatchObject({
      ...{ verdict: 'cannot-tell', reasons: ['further-units-needed'], next: 'test-further-units' },
    });
    const pass = judged({ contents, furtherContents: spread(100, 5, 20) });
    expect(pass).toMatchObject({ verdict: 'pass', next: 'none' });
    // By hand: squares 10 x 49 + 20 x 25 = 990 over 29.
    expect(pass.numbers!.stage2!.acceptanceValue).toBeCloseTo(2 * Math.sqrt(990 / 29), 12);
    const fail = judged({ contents, furtherContents: spread(100, 8, 20) });
    expect(fail).toMatchObject({ verdict: 'fail', reasons: ['acceptance-value-above-limit'], next: 'investigate' });
  });
  test('golden: a unit outside (1 -+ 0.25) M fails although the acceptance value of 30 passes', () => {
    const furtherContents = [74, ...spread(101.36, 1, 19)];
    const found = judged({ contents: spread(100, 7), furtherContents });
    expect(found).toMatchObject({ verdict: 'fail', reasons: ['unit-outside-limits'], next: 'investigate' });
    expect(found.numbers!.stage2!.outside.map(({ unit }) => unit)).toEqual([11]);
  });
  test('golden: rounding decides at 15.04, and both verdicts are said', () => {
    // AV = 2.4 d sqrt(10/9) = 15.04.
    const contents = spread(100, 15.04 / 2.4 / Math.sqrt(10 / 9));
    expect(judged({ contents })).toMatchObject({ verdict: 'cannot-tell' });
    const rounded = judged({ contents, rounding: 'halfUp' });
    expect(rounded).toMatchObject({
      verdict: 'pass',
      numbers: { verdicts: { unrounded: 'cannot-tell', halfUp: 'pass' } },
    });
    expect(rounded.numbers!.stage1).toMatchObject({ roundedAcceptanceValue: 15 });
  });
  test('golden: 15.05 rounds up and fails either way', () => {
    const contents = spread(100, 15.05 / 2.4 / Math.sqrt(10 / 9));
    expect(judged({ contents, rounding: 'halfUp' }).numbers!.stage1.roundedAcceptanceValue).toBe(15.1);
  });
  test.each([
    [{ purpose: 'trial' }, ['trial-data']],
    [{ route: ['uniformity-of-mass'] }, ['test-not-in-dossier']],
    [{ route: [], purpose: 'trial' }, ['trial-data', 'test-not-in-dossier']],
    [{ purpose: 'releas' as 'release' }, ['trial-data']],
  ] as const)('refuses: conduct %o -> no verdict, numbers stay, nothing follows', (part, reasons) => {
    for (const contents of [spread(100, 1), spread(100, 30)]) {
      const found = judged({ contents, conduct: { ...conduct, ...part }, furtherContents: spread(100, 30, 20) });
      expect(found).toMatchObject({ verdict: 'cannot-tell', next: 'none' });
      expect(found.reasons.slice(0, reasons.length)).toEqual(reasons);
      expect(found.numbers!.stage1.n).toBe(10);
    }
  });
  test('limit: content is judged by itself whatever else is in the capsule', () => {
    expect(judged({ conduct: { ...conduct, loadCount: 3 } }).verdict).toBe('pass');
  });
  test.each([
    [{ contents: [] }, 'not-ten-contents'],
    [{ contents: [100] }, 'not-ten-contents'],
    [{ contents: spread(100, 1, 100) }, 'not-ten-contents'],
    [{ furtherContents: spread(100, 1, 19) }, 'not-twenty-further-contents'],
    [{ contents: [NaN, ...spread(100, 1, 9)] }, 'content-not-a-number'],
    [{ contents: spread(100, 9), furtherContents: [Infinity, ...spread(100, 1, 19)] }, 'content-not-a-number'],
  ])('refuses: %o -> cannot-tell %s', (part, reason) => {
    expect(judged(part)).toMatchObject({ verdict: 'cannot-tell', reasons: [reason], next: 'none' });
  });
  test('refuses: 100 units with the text to look into', () => {
    expect(judged({ contents: spread(100, 1, 100) }).lookInto).toMatch(/2\.9\.47/);
  });
  test.each([0, 1.5, NaN])('refuses: loadCount %s', (loadCount) => {
    expect(() => judged({ conduct: { ...conduct, loadCount } })).toThrow('loadCount');
  });
});
