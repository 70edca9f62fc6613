import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MassJudgement } from '#decisions';
import { MASS_LIMITS, probabilityOfPassingUniformityOfMass, uniformityOfMass } from '#decisions';
import { fillNormals, seedStream } from '#random';

interface Case {
  readonly id: string;
  readonly inputs: { readonly gross_mg: readonly number[]; readonly shell_mg: readonly number[] };
  readonly expected: {
    readonly mean_net: number;
    readonly limit_pct: number;
    readonly n_outside_single: number;
    readonly n_outside_double: number;
    readonly max_deviation_pct: number;
    readonly passes: boolean;
  };
  readonly tolerance: { readonly abs: number };
}
const path = new URL('../../golden/uniformity_of_mass.json', import.meta.url);
const { cases } = JSON.parse(readFileSync(path, 'utf8')) as { cases: Case[] };

const conduct = { route: ['uniformity-of-mass'], purpose: 'release' } as const;
const judged = (contents: readonly number[], limits = MASS_LIMITS): MassJudgement =>
  uniformityOfMass({ contents, limits, conduct });

/** 20 contents about a mean, with the given deviations in pairs that cancel. */
const about = (mean: number, ...deviations: number[]): number[] => [
  ...deviations.flatMap((d) => [mean + d, mean - d]),
  ...Array<number>(20 - 2 * deviations.length).fill(mean),
];

describe('uniformityOfMass', () => {
  test.each(cases)('golden: $id', ({ inputs, expected, tolerance }) => {
    const contents = inputs.gross_mg.map((gross, i) => gross - inputs.shell_mg[i]!);
    const { verdict, numbers } = judged(contents);
    expect(verdict).toBe(expected.passes ? 'pass' : 'fail');
    expect(numbers!.limit_pct).toBe(expected.limit_pct);
    expect(numbers!.beyondLimitCount).toBe(expected.n_outside_single);
    expect(numbers!.beyondTwiceCount).toBe(expected.n_outside_double);
    expect(Math.abs(numbers!.mean - expected.mean_net)).toBeLessThanOrEqual(tolerance.abs);
    expect(Math.abs(numbers!.largestDeviation_pct - expected.max_deviation_pct)).toBeLessThanOrEqual(tolerance.abs);
  });

  test.each([
    // By hand, Ph. Eur. 2.9.5: "more than" is strict; 10 % of 200 = 20, 7.5 % of 400 = 30.
    ['two at the limit', about(200, 20), 'pass', 0, 0],
    ['two beyond', about(200, 20.1), 'pass', 2, 0],
    ['four beyond', about(200, 20.1, 20.2), 'fail', 4, 0],
    ['two at twice the limit', about(200, 40), 'pass', 2, 0],
    ['two beyond twice', about(200, 40.1), 'fail', 2, 2],
    ['two at the limit of the heavy class', about(400, 30), 'pass', 0, 0],
    ['four beyond in the heavy class', about(400, 30.1, 30.2), 'fail', 4, 0],
    ['the class edge itself has the narrow limit', about(300, 24, 25), 'fail', 4, 0],
    ['just below the class edge', about(299.9, 24, 25), 'pass', 0, 0],
  ] as const)('golden: %s', (...[, contents, verdict, ...counts]) => {
    const judgement = judged(contents);
    expect(judgement.verdict).toBe(verdict);
    expect([judgement.numbers?.beyondLimitCount, judgement.numbers?.beyondTwiceCount]).toEqual(counts);
  });

  test('property: the order of the contents does not matter', () => {
    const mass = fc.double({ min: 80, max: 120, noNaN: true });
    fc.assert(
      fc.property(fc.array(mass, { minLength: 20, maxLength: 20 }), (contents) => {
        const { verdict, numbers } = judged(Object.freeze(contents));
        const turned = judged(contents.toReversed());
        expect([turned.verdict, turned.numbers?.beyondLimitCount]).toEqual([verdict, numbers?.beyondLimitCount]);
      }),
      { seed: 47 },
    );
  });

  test('limit: an empty unit fails, other limits are data', () => {
    expect(judged(about(200, 200))).toMatchObject({
      verdict: 'fail',
      reasons: ['beyond-twice-limit'],
    });
    const limits = { classEdge: 250, limitBelow_pct: 7.5, limitFrom_pct: 5 };
    expect(judged(about(260, 14, 15), limits).verdict).toBe('fail');
    expect(judged(about(240, 14, 15), limits).verdict).toBe('pass');
  });

  test.each([
    ['none', [], 'not-twenty-contents'],
    ['one', [250], 'not-twenty-contents'],
    ['nineteen', about(250).slice(1), 'not-twenty-contents'],
    ['NaN among them', [NaN, ...about(250).slice(1)], 'content-not-a-number'],
    ['an infinity among them', [Infinity, ...about(250).slice(1)], 'content-not-a-number'],
    ['a mean of 0', about(0), 'mean-not-positive'],
  ] as const)('refuses: %s -> cannot-tell', (_name, contents, reason) => {
    expect(judged(contents)).toEqual({
      verdict: 'cannot-tell',
      reasons: [reason],
      next: 'none',
      source: 'Ph. Eur. 2.9.5',
    });
  });

  test('refuses: several loads and trial data -> cannot-tell with the numbers', () => {
    const several = { ...conduct, loadCount: 2, purpose: 'trial' } as const;
    const found = uniformityOfMass({ contents: about(200), conduct: several });
    expect(found).toMatchObject({ verdict: 'cannot-tell', reasons: ['trial-data', 'several-loads'], next: 'none' });
    expect(found.numbers!.mean).toBe(200);
  });

  test('golden: a failure says who, and that it is investigated', () => {
    const { next, numbers } = judged(about(200, 20.1, 41));
    expect(next).toBe('investigate');
    expect([numbers!.beyondLimit, numbers!.beyondTwice]).toEqual([
      [1, 2, 3, 4],
      [3, 4],
    ]);
  });

  test.each([NaN, Infinity, 0, -5])('refuses: a limit of %s -> out of range, never a pass', (limitBelow_pct) => {
    const limits = { ...MASS_LIMITS, limitBelow_pct };
    expect(() => judged(about(200, 20), limits)).toThrow(/limitBelow_pct/);
  });
});

describe('probabilityOfPassingUniformityOfMass', () => {
  test.each([
    // 2e6 independently simulated samples, SE below .0004, another implementation; 7.5 % class. Ours: error 5e-5.
    [3, 0.9987],
    [3.5, 0.981],
    [4, 0.903],
    [4.5, 0.74],
    [5, 0.531],
  ])('golden: relative sd %s %% -> %s', (relativeSd_pct, expected) => {
    const got = probabilityOfPassingUniformityOfMass({ mean: 500, relativeSd_pct });
    expect(Math.abs(got - expected)).toBeLessThan(3 * 0.0004);
  });

  test.each([
    [303, 5],
    [299, 4.5],
    [296, 6],
    [150, 7],
  ])(
    'property: agrees with its plain twin, 40000 samples judged one by one: mean %s, relative sd %s %%',
    (mean, sd) => {
      const samples = 40000;
      const stream = seedStream({ seed: 96 });
      const block = new Float64Array(20);
      let passed = 0;
      for (let i = 0; i < samples; i++) {
        fillNormals(stream, block);
        const contents = Array.from(block, (z) => mean * (1 + (sd / 100) * z));
        if (judged(contents).verdict === 'pass') passed++;
      }
      const got = probabilityOfPassingUniformityOfMass({ mean, relativeSd_pct: sd });
      expect(Math.abs(got - passed / samples)).toBeLessThan(4 * Math.sqrt((got * (1 - got)) / samples));
    },
  );

  test('property: a probability that falls with the spread, and near the edge lies between the classes', () => {
    const relativeSd = fc.double({ min: 0, max: 30, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1000, noNaN: true }), relativeSd, (mean, relativeSd_pct) => {
        const at = (m: number, r: number): number =>
          probabilityOfPassingUniformityOfMass({ mean: m, relativeSd_pct: r });
        const here = at(mean, relativeSd_pct);
        expect(here).toBeGreaterThanOrEqual(at(1e6, relativeSd_pct) - 1e-6);
        expect(here).toBeLessThanOrEqual(at(1e-6, relativeSd_pct) + 1e-6);
        expect(at(1000, relativeSd_pct * 1.1)).toBeLessThanOrEqual(at(1000, relativeSd_pct) + 1e-9);
      }),
      { seed: 48 },
    );
  });

  test('limit: no spread passes, a huge one fails', () => {
    expect(probabilityOfPassingUniformityOfMass({ mean: 300, relativeSd_pct: 0 })).toBe(1);
    expect(probabilityOfPassingUniformityOfMass({ mean: 300, relativeSd_pct: 1e-300 })).toBe(1);
    expect(probabilityOfPassingUniformityOfMass({ mean: 300, relativeSd_pct: 0.5 })).toBe(1);
    expect(probabilityOfPassingUniformityOfMass({ mean: 300, relativeSd_pct: 60 })).toBeLessThan(1e-6);
  });

  test.each([
    [{ mean: NaN }, 'not-finite: mean'],
    [{ mean: 0 }, 'out-of-range: mean=0 above=0'],
    [{ relativeSd_pct: -1 }, 'out-of-range: relativeSd_pct=-1 min=0'],
    [{ relativeSd_pct: NaN }, 'not-finite: relativeSd_pct'],
    [{ limits: { ...MASS_LIMITS, limitFrom_pct: 0 } }, 'out-of-range: limitFrom_pct'],
    [{ limits: { ...MASS_LIMITS, classEdge: NaN } }, 'not-finite: classEdge'],
  ])('refuses: %o -> %s', (part, message) => {
    expect(() => probabilityOfPassingUniformityOfMass({ mean: 300, relativeSd_pct: 3, ...part })).toThrow(message);
  });
});
