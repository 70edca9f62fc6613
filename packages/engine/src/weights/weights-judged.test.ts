import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '#catalogue';
import { assuranceOfWeights } from './assurance-of-weights.ts';
import { capabilityOfWeights } from './capability-of-weights.ts';
import { histogram } from './histogram.ts';
import { massSummary } from './mass-summary.ts';
import { netSummary } from './net-summary.ts';
import { outliers } from './outliers.ts';
import type { WeightsInput } from './weights-input.ts';
import { weightsJudged } from './weights-judged.ts';

const LIMITS = { sampleCount: 20, meanAction_pct: 3, individualAction_pct: 7.5, individualAlert_pct: 5 };
/** Twenty net masses about 430, by hand: mean 430 exactly, none beyond 3 %. */
const TWENTY = [420, 440, 422, 438, 424, 436, 426, 434, 428, 432, 421, 439, 423, 437, 425, 435, 427, 433, 429, 431];

function asked(masses: readonly number[], more: Partial<WeightsInput> = {}): WeightsInput {
  return Object.freeze({
    ...({ capsules: masses.map((mass_mg) => ({ mass_mg })), basis: 'net', purpose: 'in-process' } as const),
    ...{ target_mg: 430, limits: LIMITS, tests: ['uniformity-of-mass'] as const, ...more },
  });
}

describe('massSummary', () => {
  test('golden: 1 to 10 with the printed t (2.262157) and chi-square (19.0228, 2.70039) of 9 degrees of freedom', () => {
    const { mean, sd } = massSummary([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(mean.value_mg).toBe(5.5);
    expect(sd.value_mg).toBeCloseTo(Math.sqrt(82.5 / 9), 12);
    expect(mean.high_mg - 5.5).toBeCloseTo((2.262157 * Math.sqrt(82.5 / 9)) / Math.sqrt(10), 5);
    expect(sd.low_mg).toBeCloseTo(Math.sqrt(82.5 / 19.0228), 4);
    expect(sd.high_mg).toBeCloseTo(Math.sqrt(82.5 / 2.70039), 4);
  });
  test('refuses: one value has no spread', () => {
    expect(() => massSummary([430])).toThrow();
  });
});

describe('netSummary', () => {
  test('golden: gross sd 10.04 less shell sd 2.30 leaves 9.77, by hand', () => {
    const half = 10.04 * Math.sqrt(49 / 50);
    const masses = Array.from({ length: 50 }, (_, i) => 428.6 + (i % 2 === 0 ? half : -half));
    const tare = { mean_mg: 97, sd_mg: 2.3, shellCount: 50, standardError_mg: 2.3 / Math.sqrt(50) };
    const net = netSummary(masses, { way: 'mean-tare', tare });
    expect(net.sd.value_mg).toBeCloseTo(Math.sqrt(10.04 * 10.04 - 2.3 * 2.3), 9);
    expect(net.sd.value_mg).toBeCloseTo(9.77, 2);
  });
});

describe('outliers', () => {
  test('golden: median 2.45 and MAD 0.15, by hand: 8.2 and 8.3 are beyond 3.5', () => {
    expect(outliers([2.1, 2.6, 2.4, 2.5, 2.3, 2.1, 2.3, 2.6, 8.2, 8.3])).toEqual([8, 9]);
  });
  test.each([[[]], [[1]], [[1, 9]], [[5, 5, 5, 5]]])('limit: %j flags nothing', (masses) => {
    expect(outliers(masses)).toEqual([]);
  });
});

describe('capabilityOfWeights', () => {
  test('golden: Ppk 1.33 of 50 lies between 1.05 and 1.61, by the formula of Bissell by hand', () => {
    // variance 1/450 + 1.3333^2/98 = 0.0203628; half width 1.95996 x 0.142698 = 0.27969
    const summary = massSummary(TWENTY);
    const net = {
      ...summary,
      capsuleCount: 50,
      mean: { ...summary.mean, value_mg: 430 },
      sd: { ...summary.sd, value_mg: 8.0625 },
    };
    const { card } = weightsJudged(asked(TWENTY, { basis: 'gross', target_mg: 333, tare: TARE }));
    const limits = { netLow_mg: 397.75, netHigh_mg: 462.25, grossLow_mg: 0, grossHigh_mg: 0 };
    const found = capabilityOfWeights(net, { ...card!, individualAction: limits });
    expect(found?.ppk_ratio).toBeCloseTo(4 / 3, 9);
    expect(found?.ppkLow_ratio).toBeCloseTo(1.05364, 4);
    expect(found?.ppkHigh_ratio).toBeCloseTo(1.61302, 4);
  });
});

describe('assuranceOfWeights', () => {
  test('golden: RSD 3 % passes the uniformity of mass with 0.999, 4 % with 0.90 (practice of this project, computed)', () => {
    const summary = massSummary(TWENTY);
    const at = (value_pct: number): number | undefined =>
      assuranceOfWeights(asked(TWENTY), { ...summary, rsd: { ...summary.rsd, value_pct } })[0]?.atEstimate_frac;
    expect(at(3)).toBeCloseTo(0.999, 3);
    expect(at(4)).toBeCloseTo(0.903, 3);
    expect(at(5)).toBeCloseTo(0.531, 3);
  });
  test('property: the bound never lies above the estimate', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 12, noNaN: true }), (value_pct) => {
        const summary = massSummary(TWENTY);
        const input = asked(TWENTY, {
          tests: ['uniformity-of-mass', 'dosage-units-by-mass'],
          substances: [{ name: 'base', content_pct: 99 }],
        });
        for (const { lowerBound_frac, atEstimate_frac } of assuranceOfWeights(input, {
          ...summary,
          rsd: { ...summary.rsd, value_pct },
        }))
          expect(lowerBound_frac).toBeLessThanOrEqual(atEstimate_frac + 1e-9);
      }),
      { seed: 1, numRuns: 30 },
    );
  });
});

describe('histogram', () => {
  test('property: every mass is counted once, bars join edge to edge', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.integer({ min: 10, max: 10_000 }).map((tenths) => tenths / 10),
          { minLength: 1, maxLength: 60 },
        ),
        (masses) => {
          const { counts, low_mg, width_mg } = histogram(masses, undefined);
          expect(counts.reduce((sum, count) => sum + count, 0)).toBe(masses.length);
          expect(low_mg).toBeLessThan(Math.min(...masses) + 1e-9);
          // An edge is a product of doubles: within rounding of the last mass counts as on it.
          expect(low_mg + counts.length * width_mg).toBeGreaterThan(Math.max(...masses) - 1e-9);
        },
      ),
      { seed: 1 },
    );
  });
  test('golden: an edge falls on each single limit', () => {
    const { histogram: bars } = weightsJudged(asked([...TWENTY, 300]));
    const { low_mg, width_mg } = bars!;
    for (const limit_mg of [397.75, 462.25])
      expect(Math.abs(((limit_mg - low_mg) / width_mg) % 1)).toSatisfy(
        (rest: number) => rest < 1e-6 || rest > 1 - 1e-6,
      );
  });
});

const TARE = {
  mean_mg: 97,
  sd_mg: 2.3,
  shellCount: 50,
  standardError_mg: 2.3 / Math.sqrt(50),
  basis: 'measured',
} as const;
const STEP = { adjuster: 'pin1Depth_mm', change_mg_per_step: 1.85, step_mm: 0.1 };

describe('weightsJudged', () => {
  test('golden: twenty on target pass and are left alone', () => {
    const found = weightsJudged(asked(TWENTY));
    expect(found).toMatchObject({ verdict: 'pass', conclusion: { code: 'leave-alone', mean_mg: 430 } });
    expect(found.tests[0]?.numbers).toMatchObject({ limit_pct: 7.5, low_mg: 397.75, high_mg: 462.25 });
    expect(found.limits.map(({ verdict }) => verdict)).toEqual(['pass', 'pass']);
  });
  test('golden: 30 mg light in a trial turns the pin of the design 16 steps deeper: 30 / 1.85 = 16.2', () => {
    const light = TWENTY.map((mass_mg) => mass_mg - 30);
    const found = weightsJudged(asked(light, { purpose: 'trial', corrections: { under: STEP } }));
    expect(found.conclusion).toMatchObject({
      code: 'turn',
      adjuster: 'pin1Depth_mm',
      stepCount: 16,
      direction: 'deeper',
    });
    expect(found.conclusion).toMatchObject({ expected_mg: expect.closeTo(429.6, 9) as number });
    expect(weightsJudged(asked(light, { purpose: 'trial' })).conclusion.code).toBe('mean-outside');
  });
  test('golden: a capsule outside the single limits stops an in-process check', () => {
    const found = weightsJudged(asked([...TWENTY.slice(1), 390]));
    expect(found.conclusion).toEqual({ code: 'stop-and-investigate', why: 'single', outsideCount: 1 });
    expect(found.limits[1]?.outside[0]).toMatchObject({ index: 19, net_mg: 390 });
  });
  test('golden: an outlier is flagged and stays in every figure', () => {
    const found = weightsJudged(asked([...TWENTY, 600]));
    expect(found.outliers.map(({ index }) => index)).toEqual([20]);
    expect(found.net?.mean.value_mg).toBeCloseTo((20 * 430 + 600) / 21, 9);
  });
  test.each([
    [{ purpose: 'trial' }, 'trial-data', 'pass'],
    [{ route: ['dosage-units-by-mass'] }, 'test-not-in-dossier', 'pass'],
    [{ loadCount: 2 }, 'several-loads', undefined],
    [{ purpose: 'release', unreadCount: 1 }, 'weights-not-read', 'pass'],
  ] as const)('refuses: %j gives no verdict: %s', (more, reason, wouldBe) => {
    const [found] = weightsJudged(asked(TWENTY, more)).tests;
    expect(found).toMatchObject({ verdict: 'cannot-tell' });
    expect(found?.reasons).toContain(reason);
    expect(found?.wouldBe).toBe(wouldBe);
  });
  test('refuses: a mean tare gives no release verdict; own shells do', () => {
    const gross = TWENTY.map((mass_mg) => ({ mass_mg: mass_mg + 97 }));
    const input = asked([], { capsules: gross, basis: 'gross', purpose: 'release', tare: TARE });
    expect(weightsJudged(input).conclusion).toMatchObject({ code: 'no-verdict', reason: 'mean-tare-only' });
    const own = gross.map(({ mass_mg }) => ({ mass_mg, shell_mg: 97 }));
    expect(weightsJudged({ ...input, capsules: own })).toMatchObject({
      verdict: 'pass',
      netFrom: { way: 'own-shell' },
    });
  });
  test.each([0, 1, 2, 9])('refuses: %s weights are no pass', (count) => {
    const found = weightsJudged(asked(TWENTY.slice(0, count)));
    expect(found.verdict).not.toBe('pass');
    expect(found.conclusion).toMatchObject({ code: 'not-enough-data', capsuleCount: count });
  });
  test.each([NaN, Infinity, 0, -1])('refuses: a mass of %s', (mass_mg) => {
    expect(() => weightsJudged(asked([...TWENTY.slice(1), mass_mg]))).toThrow(DomainError);
  });
  test('refuses: without a tare gross weights say nothing of the fill', () => {
    const found = weightsJudged(asked(TWENTY, { basis: 'gross' }));
    expect(found).toMatchObject({ verdict: 'cannot-tell', conclusion: { code: 'net-not-known' } });
    expect(found.tests[0]?.reasons).toEqual(['net-not-known']);
  });
  test('refuses: a mean closer to its limit than the tare is sure', () => {
    const shift = TWENTY.map((mass_mg) => mass_mg + 97 + 12.8);
    const found = weightsJudged(asked(shift, { basis: 'gross', tare: TARE, tests: [] }));
    expect(found).toMatchObject({ verdict: 'cannot-tell', conclusion: { code: 'mean-cannot-be-told' } });
  });
  test('refuses: weights that are all equal pass nothing', () => {
    const found = weightsJudged(asked(new Array<number>(20).fill(430)));
    expect(found).toMatchObject({ verdict: 'cannot-tell', conclusion: { code: 'all-equal', mass_mg: 430 } });
    expect(found.tests[0]).toMatchObject({ verdict: 'cannot-tell', reasons: ['all-equal'], wouldBe: 'pass' });
  });
  test.each([
    { meanAction_pct: 8 },
    { individualAction_pct: 100 },
    { individualAlert_pct: 9 },
    { meanAction_pct: NaN },
    { individualAction_pct: 0 },
  ])('refuses: limits %j that exclude each other or everything', (more) => {
    expect(() => weightsJudged(asked(TWENTY, { limits: { ...LIMITS, ...more } }))).toThrow(DomainError);
  });
  test('golden: a content that belongs to the target goes with the mean: 100 x 420 / 430', () => {
    const light = [419, 421, 418, 422, 417, 423, 416, 424, 415, 425];
    const substances = [{ name: 'base', content_pct: 100, contentAt_mg: 430 }];
    const [found] = weightsJudged(asked(light, { tests: ['dosage-units-by-mass'], substances })).tests;
    expect(found?.numbers['assay_pct']).toBeCloseTo((100 * 420) / 430, 9);
  });
  test('property: the order of the weights changes no figure and no verdict', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(TWENTY, { minLength: 20 }), (masses) => {
        const [a, b] = [weightsJudged(asked(TWENTY)), weightsJudged(asked(masses))];
        expect(b.verdict).toBe(a.verdict);
        expect(b.net?.sd.value_mg).toBeCloseTo(a.net?.sd.value_mg ?? NaN, 9);
        expect(b.tests[0]?.verdict).toBe(a.tests[0]?.verdict);
      }),
      { seed: 1 },
    );
  });
});
