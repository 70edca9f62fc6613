import { describe, expect, test } from 'vitest';
import type { SimulationInput, UnitKind } from '#decisions';
import {
  acceptanceValueOfUnits,
  probabilityOfPassingDosageUnits,
  SIMULATION_CHUNKS,
  simulateDosageUnits,
} from '#decisions';
import { fillNormals, nextWord, seedStream } from '#random';

const BLOCK = 4096;
const bores: readonly UnitKind[] = [
  { mean: 101, sd: 3, share: 70 },
  { mean: 92, sd: 6, share: 25 },
  { mean: 70, sd: 2, share: 5 },
];

/** Plain twin: the same numbers, judged stage by stage with the function that the judgement uses. */
function plainTwin({ kinds, testCount, seed, target = 100 }: SimulationInput): { passed: number; stage1: number } {
  const total = kinds.reduce((sum, { share }) => sum + share, 0);
  let [passed, stage1] = [0, 0];
  for (let chunk = 0; chunk < SIMULATION_CHUNKS; chunk++) {
    const stream = seedStream({ seed, chunk });
    let left = Math.floor((testCount * (chunk + 1)) / 64) - Math.floor((testCount * chunk) / 64);
    while (left > 0) {
      const normals = new Float64Array(BLOCK);
      fillNormals(stream, normals);
      const block = Array.from(normals, (z) => {
        const kind = kinds.length === 1 ? kinds[0]! : drawn(kinds, (total * nextWord(stream)) / 2 ** 32);
        return kind.mean + kind.sd * z;
      });
      for (let at = 0; left > 0 && at <= BLOCK - 30; left--) {
        const first = acceptanceValueOfUnits({ contents: block.slice(at, at + 10), target });
        if (first.isWithinLimit.unrounded) {
          [stage1, passed, at] = [stage1 + 1, passed + 1, at + 10];
          continue;
        }
        const all = acceptanceValueOfUnits({ contents: block.slice(at, at + 30), target });
        if (all.isWithinLimit.unrounded && all.outside.length === 0) passed++;
        at += 30;
      }
    }
  }
  return { passed, stage1 };
}

function drawn(kinds: readonly UnitKind[], point: number): UnitKind {
  let sum = 0;
  return kinds.find(({ share }) => point < (sum += share)) ?? kinds.at(-1)!;
}

describe('simulateDosageUnits', () => {
  test.each([
    [[{ mean: 96, sd: 5.5, share: 1 }], 100],
    [[{ mean: 103, sd: 7, share: 2 }], 106],
    [bores, 100],
    [[...bores, { mean: 0, sd: 0, share: 0.5 }], 104],
  ] as const)('property: counts as its plain twin does: %o, T %i', (kinds, target) => {
    const input = { kinds, target, testCount: 20000, seed: 7 };
    const found = simulateDosageUnits(input);
    expect({ passed: found.passCount, stage1: found.stage1Count }).toEqual(plainTwin(input));
    expect(found.testCount).toBe(20000);
  });
  test.each([
    [96, 5.5, 100],
    [100, 7, 100],
    [104, 6, 106],
  ])('property: agrees with the exact probability of normal units: mean %s, sd %s, T %s', (mean, sd, target) => {
    const kinds = [{ mean, sd, share: 1 }];
    const { pass_frac, standardError } = simulateDosageUnits({ kinds, target, testCount: 400000, seed: 11 });
    const exact = probabilityOfPassingDosageUnits({ mean, sd, target });
    expect(Math.abs(pass_frac - exact)).toBeLessThan(4 * standardError);
  });
  test('golden: perfect fills with missing ones pass when none of the first 10 is missing: (1 - q)^10', () => {
    // By hand: one empty unit of 10 gives AV = 8.5 + 2.4 x 31.6, and it lies outside 0.75 M at stage 2.
    const kinds = [
      { mean: 100, sd: 0, share: 0.99 },
      { mean: 0, sd: 0, share: 0.01 },
    ];
    const { pass_frac, standardError, passCount, stage1Count } = simulateDosageUnits({
      ...{ kinds, testCount: 200000, seed: 5 },
    });
    expect(Math.abs(pass_frac - 0.99 ** 10)).toBeLessThan(4 * standardError);
    expect(passCount).toBe(stage1Count);
  });
  test('property: chunks shared out add up to the whole, in any split', () => {
    const input = { kinds: bores, testCount: 10007, seed: 3 };
    const whole = simulateDosageUnits(input);
    const parts = [
      { from: 0, to: 1 },
      { from: 1, to: 40 },
      { from: 40, to: SIMULATION_CHUNKS },
    ].map((chunks) => simulateDosageUnits({ ...input, chunks }));
    for (const key of ['passCount', 'stage1Count', 'testCount'] as const)
      expect(parts.reduce((sum, part) => sum + part[key], 0)).toBe(whole[key]);
    expect(simulateDosageUnits(input)).toEqual(whole);
  });
  test('limit: 254 kinds that are all alike are one kind; no spread passes', () => {
    const alike = Array.from({ length: 254 }, () => ({ mean: 100, sd: 0, share: 1 }));
    expect(simulateDosageUnits({ kinds: alike, testCount: 64, seed: 1 }).pass_frac).toBe(1);
    expect(simulateDosageUnits({ kinds: [{ mean: 80, sd: 0, share: 1 }], testCount: 64, seed: 1 }).pass_frac).toBe(0);
  });
  test.each([
    [{ kinds: [] }, 'sample-size: kinds=0'],
    [{ kinds: Array.from({ length: 255 }, () => ({ mean: 100, sd: 1, share: 1 })) }, 'sample-size: kinds=255'],
    [{ kinds: [{ mean: NaN, sd: 1, share: 1 }] }, 'not-finite: mean'],
    [{ kinds: [{ mean: 100, sd: -1, share: 1 }] }, 'out-of-range: sd'],
    [{ kinds: [{ mean: 100, sd: 1, share: 0 }] }, 'out-of-range: share'],
    [{ testCount: 63 }, 'out-of-range: testCount'],
    [{ testCount: NaN }, 'not-finite: testCount'],
    [{ seed: -1 }, 'out-of-range: seed'],
    [{ target: NaN }, 'not-finite: target'],
    [{ chunks: { from: 3, to: 3 } }, 'out-of-range: to'],
    [{ limits: { acceptanceValue: NaN, unitDeviation_pct: 25 } }, 'not-finite: acceptanceValue'],
  ])('refuses: %o -> %s', (part, message) => {
    expect(() => simulateDosageUnits({ kinds: bores, testCount: 640, seed: 1, ...part })).toThrow(message);
  });
});
