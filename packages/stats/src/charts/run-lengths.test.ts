import { describe, expect, test } from 'vitest';
import {
  type ChartRule,
  cusumRunLength,
  dispersionRunLength,
  ewmaRunLength,
  individualsRunLength,
  RULE_SETS,
  rulesRunLength,
  runRules,
  shewhartRunLength,
} from '#charts';
import { normalCdf } from '#distributions';
import { fillNormals, seedStream } from '#random';
import { simulatedRunLength } from '../../fixtures/simulated-run-length.ts';

const WESTERN_ELECTRIC = RULE_SETS['western-electric-1956'];

/** Within 4.5 standard errors: one false alarm in 150 000 such checks. */
function expectWithinError(found: { mean: number; error: number }, exact: number): void {
  expect(Math.abs(found.mean - exact) / found.error).toBeLessThan(4.5);
}

describe('shewhartRunLength', () => {
  test('golden: 370.40 at 3 sigma (ISO 7870-2, secondary)', () => {
    expect(shewhartRunLength({ limitFactor: 3, subgroupSize: 4, shift: 0 }).mean).toBeCloseTo(370.4, 1);
  });
  test.each([0, 0.5, 2])('property: rule of one point beyond 3 sigma is the same chart, shift %s', (shift) => {
    const plain = shewhartRunLength({ limitFactor: 3, subgroupSize: 1, shift });
    const chain = rulesRunLength({ rules: ['one-beyond-3-sigma'], shift });
    expect(chain.mean / plain.mean).toBeCloseTo(1, 10);
    expect(chain.sd / plain.sd).toBeCloseTo(1, 9);
  });
  test.each([{ limitFactor: 0 }, { limitFactor: NaN }, { subgroupSize: 1.5 }, { shift: Infinity }])(
    'refuses: %j',
    (wrong) => {
      expect(() => shewhartRunLength({ limitFactor: 3, subgroupSize: 1, shift: 0, ...wrong })).toThrow();
    },
  );
});

describe('rulesRunLength', () => {
  // Champ & Woodall (1987), table (from memory).
  test.each([
    [[0, 1], 225.44],
    [[0, 2], 166.05],
    [[0, 3], 152.73],
    [[0, 1, 2, 3], 91.75],
  ])('golden: rules %j of Western Electric: %s in control', (which, printed) => {
    const rules = which.map((i) => WESTERN_ELECTRIC[i]!);
    expect(rulesRunLength({ rules, shift: 0 }).mean).toBeCloseTo(printed, 2);
  });

  test.each([
    ['western-electric-1956', 0.7, [...WESTERN_ELECTRIC]],
    [
      'with runs of 15 within and 8 beyond 1 sigma',
      0.3,
      [...WESTERN_ELECTRIC, 'fifteen-within-1-sigma', 'eight-beyond-1-sigma-on-either-side'],
    ],
  ] as [string, number, ChartRule[]][])(
    'property: %s agrees with simulated charts judged by runRules',
    (_, shift, rules) => {
      const start = (): ((x: number) => boolean) => {
        const values: number[] = [];
        return (x) => {
          values.push(x);
          if (values.length > 15) values.shift();
          return runRules({ values, centre: 0, sigma: 1, rules }).some(({ at }) => at === values.length);
        };
      };
      expectWithinError(
        simulatedRunLength({ shift, runs: 1500, seed: 11 }, start),
        rulesRunLength({ rules, shift }).mean,
      );
    },
  );
  test('property: more rules, shorter runs; a steady chart is ahead of a fresh one', () => {
    const all = rulesRunLength({ rules: WESTERN_ELECTRIC, shift: 1 });
    expect(all.mean).toBeLessThan(rulesRunLength({ rules: WESTERN_ELECTRIC.slice(0, 3), shift: 1 }).mean);
    expect(rulesRunLength({ rules: WESTERN_ELECTRIC, shift: 1, start: 'steady' }).mean).toBeLessThan(all.mean);
  });
  test.each([[[]], [['six-rising-or-falling']], [['one-beyond-3-sigma', 'fourteen-alternating']]])(
    'refuses: %j',
    (rules) => {
      expect(() => rulesRunLength({ rules: rules as ChartRule[], shift: 0 })).toThrow();
    },
  );
});

/** Brook & Evans: the continuous statistic cut into cells, an independent algorithm; extrapolated over two cell widths. */
function ewmaByChain({ lambda, limitFactor, shift }: { lambda: number; limitFactor: number; shift: number }): number {
  const solve = (cells: number): number => {
    const limit = limitFactor * Math.sqrt(lambda / (2 - lambda));
    const width = (2 * limit) / cells;
    const rows = Array.from({ length: cells }, (_, i) => {
      const from = (1 - lambda) * (-limit + (i + 0.5) * width);
      const below = (edge: number): number => normalCdf((-limit + edge * width - from) / lambda - shift);
      return Array.from({ length: cells + 1 }, (__, j) =>
        j === cells ? 1 : Number(i === j) - below(j + 1) + below(j),
      );
    });
    for (let k = 0; k < cells; k++)
      for (let i = k + 1; i < cells; i++) {
        const factor = rows[i]![k]! / rows[k]![k]!;
        for (let j = k; j <= cells; j++) rows[i]![j]! -= factor * rows[k]![j]!;
      }
    const x = Array<number>(cells).fill(0);
    for (let i = cells - 1; i >= 0; i--) {
      let rest = rows[i]![cells]!;
      for (let j = i + 1; j < cells; j++) rest -= rows[i]![j]! * x[j]!;
      x[i] = rest / rows[i]![i]!;
    }
    return x[(cells - 1) / 2]!;
  };
  const [coarse, fine] = [solve(51), solve(101)];
  return fine + (fine - coarse) / ((101 / 51) ** 2 - 1);
}

describe('ewmaRunLength', () => {
  // Lucas & Saccucci (1990), table 3, as printed to three figures (from memory).
  test.each([
    [0.4, 3.054, 0, 500],
    [0.25, 2.998, 1, 11.1],
    [0.1, 2.814, 0.5, 31.3],
    [0.05, 2.615, 1, 11.4],
  ])('golden: lambda %s, L %s, shift %s: %s', (...[lambda, limitFactor, shift, printed]) => {
    expect(Math.abs(ewmaRunLength({ lambda, limitFactor, shift }) / printed - 1)).toBeLessThan(5e-3);
  });
  test.each([
    [0.1, 2.7, 0],
    [0.3, 2.9, 0.6],
    [0.6, 3, 1.5],
  ])('property: lambda %s, L %s, shift %s agrees with a Markov chain', (lambda, limitFactor, shift) => {
    const chain = ewmaByChain({ lambda, limitFactor, shift });
    expect(Math.abs(ewmaRunLength({ lambda, limitFactor, shift }) / chain - 1)).toBeLessThan(2e-4);
  });
  test.each([0, 1])('property: widening limits agree with simulation, shift %s', (shift) => {
    const [lambda, limitFactor] = [0.2, 2.5];
    const start = (): ((x: number) => boolean) => {
      let [z, left] = [0, 1];
      return (x) => {
        z = lambda * x + (1 - lambda) * z;
        left *= (1 - lambda) ** 2;
        return Math.abs(z) > limitFactor * Math.sqrt((lambda / (2 - lambda)) * (1 - left));
      };
    };
    const exact = ewmaRunLength({ lambda, limitFactor, shift, limits: 'time-varying' });
    expectWithinError(simulatedRunLength({ shift, runs: 20_000, seed: 12 }, start), exact);
  });
  test('property: a steady start agrees with a simulation that shifts at point 50', () => {
    const [lambda, limitFactor, shift] = [0.2, 2.7, 1];
    const step = (z: number, x: number): number => lambda * x + (1 - lambda) * z;
    const limit = limitFactor * Math.sqrt(lambda / (2 - lambda));
    const stream = seedStream({ seed: 13 });
    const block = new Float64Array(50);
    const settled: number[] = [];
    while (settled.length < 20_000) {
      fillNormals(stream, block);
      let [z, isIn] = [0, true];
      for (const x of block) {
        z = step(z, x);
        isIn &&= Math.abs(z) <= limit;
      }
      if (isIn) settled.push(z);
    }
    let at = 0;
    const start = (): ((x: number) => boolean) => {
      let z = settled[at++]!;
      return (x) => {
        z = step(z, x);
        return Math.abs(z) > limit;
      };
    };
    const exact = ewmaRunLength({ lambda, limitFactor, shift, start: 'steady' });
    expectWithinError(simulatedRunLength({ shift, runs: 20_000, seed: 14 }, start), exact);
  });
  test.each(['constant', 'time-varying'] as const)('limit: lambda 1 with %s limits is the plain chart', (limits) => {
    const plain = shewhartRunLength({ limitFactor: 3, subgroupSize: 1, shift: 1 }).mean;
    expect(ewmaRunLength({ lambda: 1, limitFactor: 3, shift: 1, limits }) / plain).toBeCloseTo(1, 8);
  });
  test('limit: the smallest lambda and far limits still agree from both sides of zero shift', () => {
    const at = (shift: number): number => ewmaRunLength({ lambda: 0.01, limitFactor: 2.2, shift });
    expect(at(1e-9) / at(0)).toBeCloseTo(1, 6);
    expect(at(-1) / at(1)).toBeCloseTo(1, 8);
  });
  test.each([{ lambda: 0 }, { lambda: NaN }, { limitFactor: 7 }, { shift: 11 }])('refuses: %j', (wrong) => {
    expect(() => ewmaRunLength({ lambda: 0.1, limitFactor: 2.7, shift: 0, ...wrong })).toThrow();
  });
});

describe('cusumRunLength', () => {
  // Usual textbook values of one sum, k = 0.5 (from memory): h = 4: 336, h = 5: 930; shift 1, h = 5: 10.4.
  test.each([
    [4, 0, 336],
    [5, 0, 930],
    [5, 1, 10.4],
  ])('golden: h %s, shift %s: %s', (decisionInterval, shift, printed) => {
    const { upper } = cusumRunLength({ reference: 0.5, decisionInterval, shift });
    expect(Math.abs(upper / printed - 1)).toBeLessThan(5e-3);
  });
  test.each([
    [0, 0],
    [0.5, 0],
    [0.5, 1],
  ])('property: head start %s, shift %s agrees with simulation', (headStart_frac, shift) => {
    const [reference, decisionInterval] = [0.5, 4];
    const start = (): ((x: number) => boolean) => {
      let [up, down] = [headStart_frac * decisionInterval, headStart_frac * decisionInterval];
      return (x) => {
        up = Math.max(0, up + x - reference);
        down = Math.max(0, down - x - reference);
        return up > decisionInterval || down > decisionInterval;
      };
    };
    const { twoSided } = cusumRunLength({ reference, decisionInterval, shift, headStart_frac });
    expectWithinError(simulatedRunLength({ shift, runs: 20_000, seed: 15 }, start), twoSided);
  });
  test('property: 1/ARL adds up, and the sides swap with the sign of the shift', () => {
    const one = cusumRunLength({ reference: 0.4, decisionInterval: 3, shift: 0.3 });
    const other = cusumRunLength({ reference: 0.4, decisionInterval: 3, shift: -0.3 });
    expect(1 / one.twoSided).toBeCloseTo(1 / one.upper + 1 / one.lower, 12);
    expect(other.upper).toBeCloseTo(one.lower, 6);
  });
  test('limit: an endless side is cut off, the other decides', () => {
    const { twoSided, upper, lower } = cusumRunLength({ reference: 1, decisionInterval: 10, shift: 3 });
    expect(lower).toBe(1e11);
    expect(twoSided).toBeCloseTo(upper, 6);
  });
  test.each([{ reference: -1 }, { decisionInterval: 25 }, { shift: NaN }, { headStart_frac: 1 }])(
    'refuses: %j',
    (wrong) => {
      expect(() => cusumRunLength({ reference: 0.5, decisionInterval: 4, shift: 0, ...wrong })).toThrow();
    },
  );
});

describe('individualsRunLength', () => {
  test.each([
    [3, 3.686, 0, 1.2],
    [3, 2.5, 1, 1],
    [2.5, 1.2, 0.3, 0.8],
    [2.5, 6, 0.5, 1],
  ])(
    'property: L %s, D %s, shift %s, ratio %s agrees with simulation',
    (...[individualLimit, movingRangeLimit, shift, sigmaRatio]) => {
      const start = (): ((x: number) => boolean) => {
        let last = NaN;
        return (z) => {
          const x = z * sigmaRatio + shift;
          const isOut = Math.abs(x) > individualLimit || Math.abs(x - last) > movingRangeLimit;
          last = x;
          return isOut;
        };
      };
      const exact = individualsRunLength({ individualLimit, movingRangeLimit, shift, sigmaRatio });
      expectWithinError(simulatedRunLength({ shift: 0, runs: 20_000, seed: 16 }, start), exact);
    },
  );
  test('limit: moving ranges without a limit in reach leave the plain chart', () => {
    const found = individualsRunLength({ individualLimit: 3, movingRangeLimit: 6.5, shift: 0.5, sigmaRatio: 1 });
    expect(found / shewhartRunLength({ limitFactor: 3, subgroupSize: 1, shift: 0.5 }).mean).toBeCloseTo(1, 8);
  });
  test.each([{ individualLimit: NaN }, { movingRangeLimit: 0.5 }, { sigmaRatio: 0 }, { shift: 11 }])(
    'refuses: %j',
    (wrong) => {
      const chart = { individualLimit: 3, movingRangeLimit: 3.686, shift: 0, sigmaRatio: 1 };
      expect(() => individualsRunLength({ ...chart, ...wrong })).toThrow();
    },
  );
});

describe('dispersionRunLength', () => {
  test('property: for two values range and standard deviation are the same chart', () => {
    for (const sigmaRatio of [0.8, 1, 1.5]) {
      const { ranges, sds } = dispersionRunLength({ subgroupSize: 2, sigmaRatio });
      expect(ranges / sds).toBeCloseTo(1, 8);
    }
  });
  test.each([{ subgroupSize: 1 }, { sigmaRatio: 0 }, { sigmaRatio: NaN }])('refuses: %j', (wrong) => {
    expect(() => dispersionRunLength({ subgroupSize: 5, sigmaRatio: 1, ...wrong })).toThrow();
  });
});
