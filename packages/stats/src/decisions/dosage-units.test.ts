import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acceptanceValue, probabilityAcceptanceValueWithin, probabilityOfPassingDosageUnits } from '#decisions';
import { chiSquareCdf, normalCdf, normalQuantile } from '#distributions';
import { exp } from '#elementary';
import { fillNormals, seedStream } from '#random';

interface OcCase {
  readonly id: string;
  readonly inputs: { readonly mean: number; readonly sd: number; readonly T: number };
  readonly expected: { readonly p_stage1_exact: number; readonly p_av30_exact: number; readonly p_pass: number };
  readonly tolerance: { readonly abs: number; readonly fields: { readonly p_pass: { readonly abs: number } } };
}
interface DenseCase {
  readonly id: string;
  readonly inputs: { readonly mean: number; readonly sd: number; readonly target: number };
  readonly expected: { readonly probability: number };
}
const read = (path: string): unknown => JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'));
const oc = read('../../golden/udu_oc.json') as { cases: OcCase[] };
const dense = read('../../golden/dosage-units.json') as { cases: DenseCase[] };

const units = { mean: fc.double({ min: 80, max: 120, noNaN: true }), sd: fc.double({ min: 0, max: 20, noNaN: true }) };

describe('probabilityOfPassingDosageUnits', () => {
  test.each(oc.cases)('golden: $id, 2e7 simulated batches', ({ inputs, expected, tolerance }) => {
    const got = probabilityOfPassingDosageUnits({ mean: inputs.mean, sd: inputs.sd, target: inputs.T });
    expect(Math.abs(got - expected.p_pass)).toBeLessThanOrEqual(tolerance.fields.p_pass.abs);
  });

  test.each(dense.cases)('golden: dense quadrature, $id', ({ inputs, expected }) => {
    expect(Math.abs(probabilityOfPassingDosageUnits(inputs) - expected.probability)).toBeLessThan(1e-6);
  });

  test('golden: mean 96, SD 5.5', () => {
    // Another implementation of the same integral with k = 2.4 and 2.0, and 2e8 simulated tests: 0.8507.
    expect(probabilityOfPassingDosageUnits({ mean: 96, sd: 5.5 })).toBeCloseTo(0.8507, 4);
  });

  test.each([
    // Largest sample sd (n units, 95 % confidence, 95 % coverage) at sample means 90, 94, 98, 100; another implementation.
    [10, [1.12, 1.809, 2.498, 2.841]],
    [30, [1.676, 2.708, 3.739, 4.245]],
    [100, [2.071, 3.346, 4.618, 5.183]],
  ])('golden: acceptance limits for a sample of %s', (n, limits) => {
    // ASTM E2709, E2810: confidence region |m - mu| <= z sigma/sqrt n, sigma <= s sqrt((n-1)/chi2), sqrt(0.95) for each.
    const share = Math.sqrt(0.95);
    const z = normalQuantile((1 + share) / 2);
    const quantile = bisect([0.01, 200], (x) => chiSquareCdf({ x, degreesOfFreedom: n - 1 }) < 1 - share);
    const upper = Math.sqrt((n - 1) / quantile);
    [90, 94, 98, 100].forEach((mean, i) => {
      const worst = (s: number): number => {
        const [sd, shift] = [s * upper, (z * s * upper) / Math.sqrt(n)];
        const at = (m: number): number => probabilityOfPassingDosageUnits({ mean: m, sd });
        return Math.min(at(mean - shift), at(mean + shift));
      };
      expect(Math.abs(bisect([0.01, 9], (s) => worst(s) > 0.95) - limits[i]!)).toBeLessThan(6e-4);
    });
  });

  test.each([
    [95, 6, 0, 100],
    [104, 6.5, 0, 105],
    [101, 8, 0, 100],
    [97, 4, 3, 100],
    [100, 1, 8, 100],
  ])('property: agrees with its plain twin, 60000 simulated batches: mean %s, sd %s, bias %s, T %s', (...given) => {
    const [mean, sd, biasSd, target] = given;
    const batches = 60000;
    const share = simulated({ mean, sd, biasSd, target, batches });
    const got = probabilityOfPassingDosageUnits({ mean, sd, biasSd, target });
    expect(Math.abs(got - share)).toBeLessThan(4 * Math.sqrt((got * (1 - got)) / batches));
  });

  test.each([
    [100, 2.2, 1],
    [95, 4, 2],
    [108, 3, 4],
    [97, 0.5, 2],
  ])('property: what all units have in common averages over means: mean %s, sd %s, bias %s', (mean, sd, biasSd) => {
    let [sum, weights] = [0, 0];
    const step = 0.02;
    for (let z = -6; z <= 6; z += step) {
      const weight = exp(-0.5 * z * z);
      weights += weight;
      sum += weight * probabilityOfPassingDosageUnits({ mean: mean + z * biasSd, sd });
    }
    expect(Math.abs(probabilityOfPassingDosageUnits({ mean, sd, biasSd }) - sum / weights)).toBeLessThan(1e-6);
  });

  test.each([
    [90, 4],
    [100, 8],
  ])('limit: units alike: a normal mean between 83.5 and 116.5 (definition): mean %s, bias %s', (mean, biasSd) => {
    const exact = normalCdf((116.5 - mean) / biasSd) - normalCdf((83.5 - mean) / biasSd);
    expect(Math.abs(probabilityOfPassingDosageUnits({ mean, sd: 0, biasSd }) - exact)).toBeLessThan(1e-6);
  });

  test('property: a probability, never below that of stage 1, and it falls with the spread', () => {
    fc.assert(
      fc.property(units.mean, units.sd, (mean, sd) => {
        const passing = probabilityOfPassingDosageUnits({ mean, sd });
        expect(passing).toBeGreaterThanOrEqual(0);
        expect(passing).toBeLessThanOrEqual(1);
        expect(passing).toBeGreaterThan(probabilityAcceptanceValueWithin({ mean, sd, n: 10 }) - 1e-6);
        expect(probabilityOfPassingDosageUnits({ mean, sd: sd * 1.1 })).toBeLessThan(passing + 1e-6);
      }),
      { seed: 42, numRuns: 300 },
    );
  });

  test('property: the order of the calls does not matter', () => {
    const inputs = [
      { mean: 97, sd: 4.4 },
      { mean: 103, sd: 7.7, target: 104 },
      { mean: 90, sd: 2.2 },
    ];
    const once = inputs.map(probabilityOfPassingDosageUnits);
    expect(inputs.toReversed().map(probabilityOfPassingDosageUnits)).toEqual(once.toReversed());
  });

  test('property: a target up to 101.5 changes nothing, a higher one helps a high mean', () => {
    const at = (target: number): number => probabilityOfPassingDosageUnits({ mean: 104, sd: 5, target });
    expect(at(95)).toBe(at(101.5));
    expect(at(104)).toBeGreaterThan(at(101.5));
  });

  test.each([
    // Without spread AV = |M - mean|: 83.5 and 116.5 just pass, definition.
    [83.5, 1],
    [83.49, 0],
    [100, 1],
    [116.5, 1],
    [116.51, 0],
  ])('limit: sd 0 at mean %s gives %s', (mean, expected) => {
    expect(probabilityOfPassingDosageUnits({ mean, sd: 0 })).toBe(expected);
  });

  test.each([5e-324, 1e-12, 1e-6, 1e-3])('limit: sd %s', (sd) => {
    expect(probabilityOfPassingDosageUnits({ mean: 84, sd })).toBeCloseTo(1, 9);
    expect(probabilityOfPassingDosageUnits({ mean: 83, sd })).toBe(0);
  });

  test('limit: at the very edge only the number of standard deviations counts', () => {
    const at = (sd: number): number => probabilityOfPassingDosageUnits({ mean: 83.5 + 2.4 * sd, sd });
    expect(Math.abs(at(1e-3) - at(1e-6))).toBeLessThan(1e-6);
  });

  test('limit: a huge spread never passes', () => {
    expect(probabilityOfPassingDosageUnits({ mean: 100, sd: 200 })).toBeLessThan(1e-9);
    expect(probabilityOfPassingDosageUnits({ mean: 1e9, sd: 1e9 })).toBe(0);
  });

  test.each([
    [{ mean: NaN, sd: 1 }, 'not-finite: mean'],
    [{ mean: Infinity, sd: 1 }, 'not-finite: mean'],
    [{ mean: 100, sd: NaN }, 'not-finite: sd'],
    [{ mean: 100, sd: -0.1 }, 'out-of-range: sd=-0.1 min=0'],
    [{ mean: 100, sd: 1, biasSd: -1 }, 'out-of-range: biasSd=-1 min=0'],
    [{ mean: 100, sd: 1, biasSd: NaN }, 'not-finite: biasSd'],
    [{ mean: 100, sd: 1, target: 121 }, 'out-of-range: target=121 above=0 max=120'],
    [{ mean: 100, sd: 1, target: NaN }, 'not-finite: target'],
  ])('refuses: %o -> %s', (input, message) => {
    expect(() => probabilityOfPassingDosageUnits(input)).toThrow(message);
  });
});

describe('probabilityAcceptanceValueWithin', () => {
  test.each(oc.cases)('golden: $id, both stages', ({ inputs, expected, tolerance }) => {
    const given = { mean: inputs.mean, sd: inputs.sd, target: inputs.T };
    const one = probabilityAcceptanceValueWithin({ ...given, n: 10 });
    const two = probabilityAcceptanceValueWithin({ ...given, n: 30 });
    expect(Math.abs(one - expected.p_stage1_exact)).toBeLessThanOrEqual(tolerance.abs);
    expect(Math.abs(two - expected.p_av30_exact)).toBeLessThanOrEqual(tolerance.abs);
  });

  test('property: rises with the limit from 0 to 1', () => {
    const limit = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(units.mean, units.sd, fc.tuple(limit, limit), (mean, sd, [a, b]) => {
        const at = (l: number): number => probabilityAcceptanceValueWithin({ mean, sd, n: 30, limit: l });
        expect(at(Math.min(a, b))).toBeLessThanOrEqual(at(Math.max(a, b)) + 1e-9);
        expect(at(300)).toBeCloseTo(1, 10);
      }),
      { seed: 43 },
    );
  });

  test('property: mirror images about the middle of the zone are equal', () => {
    fc.assert(
      fc.property(units.mean, units.sd, (mean, sd) => {
        const mirrored = probabilityAcceptanceValueWithin({ mean: 200 - mean, sd, n: 10 });
        expect(Math.abs(probabilityAcceptanceValueWithin({ mean, sd, n: 10 }) - mirrored)).toBeLessThan(1e-9);
      }),
      { seed: 44 },
    );
  });

  test('limit: no spread, limit 0', () => {
    expect(probabilityAcceptanceValueWithin({ mean: 90, sd: 0, n: 10, limit: 8.5 })).toBe(1);
    expect(probabilityAcceptanceValueWithin({ mean: 90, sd: 0, n: 10, limit: 8.4 })).toBe(0);
    expect(probabilityAcceptanceValueWithin({ mean: 100, sd: 1, n: 10, limit: 0 })).toBe(0);
  });

  test.each([
    [{ mean: 100, sd: 1, n: 20 }, 'sample-size: n=20'],
    [{ mean: 100, sd: 1, n: NaN }, 'not-finite: n'],
    [{ mean: 100, sd: 1, n: 10, limit: -1 }, 'out-of-range: limit=-1 min=0'],
    [{ mean: 100, sd: 1, n: 10, limit: NaN }, 'not-finite: limit'],
    [{ mean: NaN, sd: 1, n: 10 }, 'not-finite: mean'],
    [{ mean: 100, sd: -1, n: 10 }, 'out-of-range: sd=-1'],
  ])('refuses: %o -> %s', (input, message) => {
    expect(() => probabilityAcceptanceValueWithin(input)).toThrow(message);
  });
});

function bisect([from, to]: readonly [number, number], isBelowRoot: (x: number) => boolean): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 50; i++) {
    const middle = 0.5 * (low + high);
    if (isBelowRoot(middle)) low = middle;
    else high = middle;
  }
  return low;
}

interface Simulation {
  readonly mean: number;
  readonly sd: number;
  readonly biasSd: number;
  readonly target: number;
  readonly batches: number;
}

/** The test as its text says it, batch by batch. */
function simulated({ mean, sd, biasSd, target, batches }: Simulation): number {
  const stream = seedStream({ seed: 99 });
  const block = new Float64Array(31);
  let passed = 0;
  for (let i = 0; i < batches; i++) {
    fillNormals(stream, block);
    const [common = NaN, ...units] = block;
    const contents = units.map((z) => mean + biasSd * common + sd * z);
    const ten = judged(contents.slice(0, 10), target);
    const thirty = judged(contents, target);
    const inside = contents.every((x) => x >= 0.75 * thirty.reference && x <= 1.25 * thirty.reference);
    if (ten.acceptanceValue <= 15 || (thirty.acceptanceValue <= 15 && inside)) passed++;
  }
  return passed / batches;
}

function judged(contents: number[], target: number): ReturnType<typeof acceptanceValue> {
  const n = contents.length;
  const mean = contents.reduce((sum, x) => sum + x, 0) / n;
  const squares = contents.reduce((sum, x) => sum + (x - mean) * (x - mean), 0);
  return acceptanceValue({ mean, sd: Math.sqrt(squares / (n - 1)), n, target });
}
