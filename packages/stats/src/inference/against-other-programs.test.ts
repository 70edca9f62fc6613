import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  clopperPearsonInterval,
  pairedStudent,
  sampleQuantile,
  sampleSummary,
  shapiroWilk,
  tukeyComparisons,
  twoSampleStudent,
  wilsonInterval,
} from '#inference';

interface Case {
  readonly kind: string;
  readonly inputs: never;
  readonly expected: Readonly<Record<string, number>>;
}

/** Computed by scipy 1.17.1 and numpy, NumAcc exactly: see golden/inference.py. */
const { cases } = JSON.parse(readFileSync(new URL('../../golden/inference.json', import.meta.url), 'utf8')) as {
  cases: Case[];
};

interface Share {
  readonly count: number;
  readonly n: number;
}
interface Pair {
  readonly groups: number[][];
  readonly first: number;
  readonly second: number;
}
interface Accuracy {
  readonly first: number;
  readonly low: number;
  readonly high: number;
}

const METHODS: Record<string, { readonly of: (inputs: never) => object; readonly within: number }> = {
  'shapiro-wilk': { of: shapiroWilk, within: 1e-6 },
  'two-sample': { of: twoSampleStudent, within: 1e-11 },
  paired: { of: pairedStudent, within: 1e-11 },
  proportion: {
    of: (share: Share) => {
      const { low: wilsonLow, high: wilsonHigh } = wilsonInterval(share);
      return { ...clopperPearsonInterval(share), wilsonLow, wilsonHigh };
    },
    within: 1e-11,
  },
  tukey: {
    of: ({ groups, first, second }: Pair) =>
      tukeyComparisons({ groups }).find((pair) => pair.first === first && pair.second === second)!,
    within: 1e-7,
  },
  quantile: {
    of: (sample: Parameters<typeof sampleQuantile>[0]) => ({ quantile: sampleQuantile(sample) }),
    within: 1e-14,
  },
  'numerical-accuracy': {
    of: ({ first, low, high }: Accuracy) =>
      sampleSummary({ values: [first, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? low : high))] }),
    within: 1e-14,
  },
};

describe('inference', () => {
  test.each(cases)('golden: $kind, expected $expected', ({ kind, inputs, expected }) => {
    const { of, within } = METHODS[kind]!;
    const got = of(inputs) as Record<string, number>;
    for (const [name, value] of Object.entries(expected))
      expect(Math.abs(got[name]! - value), name).toBeLessThanOrEqual(within * Math.max(1e-3, Math.abs(value)));
  });
});
