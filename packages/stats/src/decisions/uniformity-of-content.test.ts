import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { uniformityOfContent } from '#decisions';

const conduct = { route: ['uniformity-of-content'], purpose: 'release' } as const;
/** Contents about 100 with deviations in pairs that cancel. */
const about = (count: number, ...deviations: number[]): number[] => [
  ...deviations.flatMap((d) => [100 + d, 100 - d]),
  ...Array<number>(count - 2 * deviations.length).fill(100),
];
const judged = (contents: readonly number[], furtherContents?: readonly number[]) =>
  uniformityOfContent({ contents, ...(furtherContents && { furtherContents }), conduct });
/** One content that stays `deviation` beside the mean of n, which is 100. */
const oneAt = (n: number, deviation: number): number[] => [
  100 + deviation,
  ...Array<number>(n - 1).fill(100 - deviation / (n - 1)),
];

describe('uniformityOfContent', () => {
  test.each([
    // By hand from the rule of Ph. Eur. 2.9.6 test B (rule itself from memory).
    ['none outside', about(10, 14, 15), undefined, 'pass', []],
    ['one outside the inner limits', oneAt(10, 20), undefined, 'pass', []],
    ['one on the outer limit', oneAt(10, 25), undefined, 'pass', []],
    ['one beyond the outer limit', oneAt(10, 25.1), undefined, 'fail', ['outside-outer-limits']],
    ['two outside call for 20 more', about(10, 16), undefined, 'cannot-tell', ['further-units-needed']],
    ['two of 30', about(10, 16), about(20, 15), 'pass', []],
    ['four of 30', about(10, 16), about(20, 16), 'fail', ['too-many-outside-inner-limits']],
    ['one of 30 beyond the outer limit', about(10, 16), oneAt(20, 26), 'fail', ['outside-outer-limits']],
    ['four of 10 fail at once', about(10, 16, 17), about(20), 'fail', ['too-many-outside-inner-limits']],
    ['20 more that nobody asked for', about(10), about(20, 60), 'pass', ['further-units-not-called-for']],
  ] as const)('golden: %s', (...[, contents, further, verdict, reasons]) => {
    const found = judged(contents, further);
    expect(found).toMatchObject({ verdict, reasons });
    expect(found.next).toBe(verdict === 'fail' ? 'investigate' : verdict === 'pass' ? 'none' : 'test-further-units');
    expect(found.source).toContain('from memory');
  });
  test('golden: three outside of 10 and none of 20 more pass: at most 3 of 30', () => {
    const contents = [116, 84, 116, 84, 100, 100, 100, 100, 100, 100];
    contents[3] = 86;
    expect(judged(contents).numbers!.stage1.outsideInner).toEqual([1, 2, 3]);
    expect(judged(contents, about(20))).toMatchObject({ verdict: 'pass', numbers: { stage2: { n: 30 } } });
  });
  test('property: neither unit nor order changes the verdict', () => {
    const content = fc.double({ min: 60, max: 140, noNaN: true });
    fc.assert(
      fc.property(fc.array(content, { minLength: 10, maxLength: 10 }), (contents) => {
        const { verdict } = judged(contents);
        expect(judged(contents.toReversed()).verdict).toBe(verdict);
        expect(judged(contents.map((x) => 0.25 * x)).verdict).toBe(verdict);
      }),
      { seed: 53 },
    );
  });
  test.each([
    [[], undefined, 'not-ten-contents'],
    [[100], undefined, 'not-ten-contents'],
    [about(10, 16), about(19), 'not-twenty-further-contents'],
    [[NaN, ...about(9)], undefined, 'content-not-a-number'],
    [about(10, 16), [NaN, ...about(19)], 'content-not-a-number'],
    [Array<number>(10).fill(0), undefined, 'mean-not-positive'],
  ] as const)('refuses: %o, %o -> %s', (contents, further, reason) => {
    expect(judged(contents, further)).toMatchObject({ verdict: 'cannot-tell', reasons: [reason] });
  });
  test('refuses: data of a trial', () => {
    const found = uniformityOfContent({ contents: about(10), conduct: { ...conduct, purpose: 'trial' } });
    expect(found).toMatchObject({ verdict: 'cannot-tell', reasons: ['trial-data'] });
  });
});
