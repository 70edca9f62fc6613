import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acceptanceValue } from '#decisions';

interface Stage {
  readonly n?: number;
  readonly mean: number;
  readonly s: number;
  readonly M: number;
  readonly M_case?: string;
  readonly AV: number;
}
interface Case {
  readonly id: string;
  readonly inputs: { readonly T: number; readonly n?: number; readonly mean?: number; readonly s?: number };
  readonly expected: { readonly M?: number; readonly AV?: number; readonly stage1?: Stage; readonly stage2?: Stage };
  readonly tolerance: { readonly abs: number };
}
const path = new URL('../../golden/udu_acceptance_value.json', import.meta.url);
const { cases } = JSON.parse(readFileSync(path, 'utf8')) as { cases: Case[] };

/** Every stage of every case, as mean and sd in, M and AV out. */
const stages = cases.flatMap(({ id, inputs, expected, tolerance }) => {
  const given = { target: inputs.T, tolerance: tolerance.abs };
  const { mean, s, n } = inputs;
  if (mean !== undefined) return [{ ...given, id, n: n!, mean, s: s!, M: expected.M!, AV: expected.AV! }];
  const [one, two] = [expected.stage1, expected.stage2];
  return [
    ...(one ? [{ ...given, ...one, id: `${id} stage 1`, n: 10 }] : []),
    ...(two ? [{ ...given, ...two, id: `${id} stage 2`, n: 30 }] : []),
  ];
});

describe('acceptanceValue', () => {
  test('limit: all 66 cases of the golden file are judged', () => {
    expect(new Set(stages.map(({ id }) => id.slice(0, 25))).size).toBe(cases.length);
  });

  test.each(stages)('golden: $id', (stage) => {
    const got = acceptanceValue({ mean: stage.mean, sd: stage.s, n: stage.n, target: stage.target });
    expect(Math.abs(got.acceptanceValue - stage.AV)).toBeLessThanOrEqual(stage.tolerance);
    expect(Math.abs(got.reference - stage.M)).toBeLessThanOrEqual(stage.tolerance);
    if ('M_case' in stage) expect(got.referenceCase).toBe(stage.M_case);
  });

  test('golden: example of the doc block', () => {
    // USP frequently asked questions on <905>, question 2.
    expect(acceptanceValue({ mean: 105.9, sd: 5, n: 10 }).acceptanceValue).toBeCloseTo(16.4, 12);
  });

  test('property: nearer to the zone or less spread is never worse', () => {
    const mean = fc.double({ min: 60, max: 140, noNaN: true });
    fc.assert(
      fc.property(mean, fc.double({ min: 0, max: 15, noNaN: true }), fc.constantFrom(10, 30), (m, sd, n) => {
        const here = acceptanceValue({ mean: m, sd, n }).acceptanceValue;
        expect(acceptanceValue({ mean: (m + 100) / 2, sd, n }).acceptanceValue).toBeLessThanOrEqual(here);
        expect(acceptanceValue({ mean: m, sd: sd / 2, n }).acceptanceValue).toBeLessThanOrEqual(here);
      }),
      { seed: 41 },
    );
  });

  test.each([
    [98.5, 100, 'inside'],
    [98.49999, 100, 'below'],
    [101.5, 101.5, 'inside'],
    [101.50001, 101.5, 'above'],
    [104, 104, 'inside'],
    [104.00001, 104, 'above'],
  ])('limit: mean %s, T %s lies %s', (mean, target, referenceCase) => {
    expect(acceptanceValue({ mean, sd: 1, n: 10, target }).referenceCase).toBe(referenceCase);
  });

  test.each([
    [{ mean: NaN, sd: 1, n: 10 }, 'not-finite: mean'],
    [{ mean: 100, sd: NaN, n: 10 }, 'not-finite: sd'],
    [{ mean: 100, sd: -1, n: 10 }, 'out-of-range: sd=-1 min=0'],
    [{ mean: 100, sd: 1, n: 20 }, 'sample-size: n=20'],
    [{ mean: 100, sd: 1, n: 10.5 }, 'not-whole: n'],
    [{ mean: 100, sd: 1, n: NaN }, 'not-finite: n'],
    [{ mean: 100, sd: 1, n: 10, target: 0 }, 'out-of-range: target'],
    [{ mean: 100, sd: 1, n: 10, target: NaN }, 'not-finite: target'],
  ])('refuses: %o -> %s', (input, message) => {
    expect(() => acceptanceValue(input)).toThrow(message);
  });
});
