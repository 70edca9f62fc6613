import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHART_RULES, type ChartRule, cusumChart, ewmaChart, RULE_SETS, runRules } from '#charts';

const ALL = Object.keys(CHART_RULES) as ChartRule[];
const series = fc.array(fc.double({ min: -4, max: 4, noNaN: true }), { minLength: 1, maxLength: 60 });
const plain = { centre: 0, sigma: 1 };

describe('runRules', () => {
  // By hand from the wording of the rules (Western Electric 1956, Nelson 1984; from memory).
  test.each([
    ['two-of-three-beyond-2-sigma', [2.5, 0, 2.1], [{ at: 3, points: [1, 3] }]],
    ['two-of-three-beyond-2-sigma', [2.5, 0, -2.1], []],
    ['two-of-three-beyond-2-sigma', [2.5, 2.5, 0], [{ at: 2, points: [1, 2] }]],
    ['four-of-five-beyond-1-sigma', [1.5, 1.5, 0, 1.5, 3.5], [{ at: 5, points: [1, 2, 4, 5] }]],
    ['one-beyond-3-sigma', [3, -3, 3.001], [{ at: 3, points: [3] }]],
    ['eight-on-one-side', [1, 1, 1, 1, 1, 1, 1, 1], [{ at: 8, points: [1, 2, 3, 4, 5, 6, 7, 8] }]],
    ['eight-on-one-side', [1, 1, 1, 1, 0, 1, 1, 1, 1], []],
    ['six-rising-or-falling', [6, 5, 4, 3, 2, 1], [{ at: 6, points: [1, 2, 3, 4, 5, 6] }]],
    ['six-rising-or-falling', [6, 5, 4, 4, 2, 1], []],
    [
      'eight-beyond-1-sigma-on-either-side',
      [2, -2, 2, -2, 2, -2, 2, -2],
      [{ at: 8, points: [1, 2, 3, 4, 5, 6, 7, 8] }],
    ],
  ] as const)('golden: %s on %j', (rule, values, expected) => {
    expect(runRules({ values, ...plain, rules: [rule] })).toEqual(expected.map((one) => ({ rule, ...one })));
  });

  test('property: turned over, moved and stretched data give the same signals', () => {
    fc.assert(
      fc.property(series, (values) => {
        const found = runRules({ values, ...plain, rules: ALL });
        expect(runRules({ values: values.map((x) => -x), ...plain, rules: ALL })).toEqual(found);
      }),
      { seed: 7 },
    );
  });
  test('property: a signal ends with its own point; what came later does not matter', () => {
    fc.assert(
      fc.property(series, (values) => {
        const found = runRules({ values, ...plain, rules: ALL });
        for (const { at, points } of found) expect(points.at(-1)).toBe(at);
        const cut = Math.ceil(values.length / 2);
        const early = runRules({ values: values.slice(0, cut), ...plain, rules: ALL });
        expect(early).toEqual(found.filter(({ at }) => at <= cut));
      }),
      { seed: 8 },
    );
  });
  test('regression: 350.6 with centre 350 and sigma 0.2 lies on the limit, not beyond', () => {
    expect(runRules({ values: [350.6, 349.4], centre: 350, sigma: 0.2, rules: ['one-beyond-3-sigma'] })).toEqual([]);
  });
  test('limit: the published sets have 4 and 8 rules', () => {
    expect(RULE_SETS['western-electric-1956']).toHaveLength(4);
    expect(RULE_SETS['nelson-1984']).toHaveLength(8);
  });
  test.each([
    { values: [] },
    { values: [NaN] },
    { values: [1], sigma: 0 },
    { values: [1], sigma: NaN },
    { values: [1], centre: Infinity },
  ])('refuses: %j', (wrong) => {
    expect(() => runRules({ ...plain, rules: ALL, ...wrong })).toThrow();
  });
});

describe('ewmaChart', () => {
  test('limit: lambda 1 is the plain chart', () => {
    const { points, finalHalfWidth } = ewmaChart({ values: [1, 5, 2], target: 2, sigma: 1, lambda: 1, limitFactor: 3 });
    expect(points.map(({ average }) => average)).toEqual([1, 5, 2]);
    expect(points.every(({ lower, upper }) => lower === -1 && upper === 5)).toBe(true);
    expect(finalHalfWidth).toBe(3);
  });
  test('property: a constant series is approached from the target, and limits only widen', () => {
    const { points } = ewmaChart({
      values: Array<number>(60).fill(3),
      target: 0,
      sigma: 1,
      lambda: 0.3,
      limitFactor: 3,
    });
    for (const [i, { average }] of points.entries()) expect(average).toBeCloseTo(3 * (1 - 0.7 ** (i + 1)), 12);
    for (let i = 1; i < points.length; i++) expect(points[i]!.upper).toBeGreaterThanOrEqual(points[i - 1]!.upper);
  });
  test.each([{ values: [] }, { values: [NaN] }, { lambda: 0 }, { lambda: 1.1 }, { sigma: 0 }, { limitFactor: NaN }])(
    'refuses: %j',
    (wrong) => {
      expect(() => ewmaChart({ values: [1], target: 0, sigma: 1, lambda: 0.2, limitFactor: 3, ...wrong })).toThrow();
    },
  );
});

describe('cusumChart', () => {
  const chart = { target: 0, sigma: 1, reference: 0.5, decisionInterval: 4 };
  test('golden: by hand: 2, 2, 2 give 1.5, 3, 4.5; mean 0.5 + 4.5/3 = 2', () => {
    const { points, signal } = cusumChart({ ...chart, values: [2, 2, 2] });
    expect(points.map(({ upperSum }) => upperSum)).toEqual([1.5, 3, 4.5]);
    expect(signal).toEqual({ at: 3, side: 'upper', mean: 2 });
  });
  test('property: turned-over data signal at the same point on the other side', () => {
    fc.assert(
      fc.property(series, (values) => {
        const one = cusumChart({ ...chart, values }).signal;
        const other = cusumChart({ ...chart, values: values.map((x) => -x) }).signal;
        expect(other?.at).toBe(one?.at);
        if (one && other) expect(other.mean).toBeCloseTo(-one.mean, 10);
      }),
      { seed: 9 },
    );
  });
  test('limit: exactly on the decision interval is no signal', () => {
    expect(cusumChart({ ...chart, values: [4.5] }).signal).toBeUndefined();
  });
  test.each([{ values: [] }, { values: [NaN] }, { sigma: 0 }, { headStart_frac: 1 }, { decisionInterval: 0 }])(
    'refuses: %j',
    (wrong) => {
      expect(() => cusumChart({ ...chart, values: [1], ...wrong })).toThrow();
    },
  );
});
