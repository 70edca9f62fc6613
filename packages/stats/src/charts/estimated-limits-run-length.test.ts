import { describe, expect, test } from 'vitest';
import { chartConstants, estimatedLimitsRunLength, shewhartRunLength } from '#charts';
import { normalCdf } from '#distributions';
import { fillNormals, seedStream } from '#random';

const WAYS = ['pooled-sd', 'mean-sd', 'mean-range'] as const;

/** Limits made from simulated subgroups of 5 again and again: the probability of a signal that each has. */
function signalShares(
  way: (typeof WAYS)[number],
  { m, shift, count }: { m: number; shift: number; count: number },
): number[] {
  const n = 5;
  const { c4, d2 } = chartConstants({ n });
  const stream = seedStream({ seed: 21 });
  const values = new Float64Array(m * n);
  return Array.from({ length: count }, () => {
    fillNormals(stream, values);
    let [total, squares, sds, ranges] = [0, 0, 0, 0];
    for (let g = 0; g < m; g++) {
      const group = values.subarray(g * n, (g + 1) * n);
      const mean = group.reduce((sum, x) => sum + x, 0) / n;
      const square = group.reduce((sum, x) => sum + (x - mean) ** 2, 0);
      total += mean;
      squares += square;
      sds += Math.sqrt(square / (n - 1));
      ranges += Math.max(...group) - Math.min(...group);
    }
    const sigma = {
      'pooled-sd': Math.sqrt(squares / (m * (n - 1))),
      'mean-sd': sds / m / c4,
      'mean-range': ranges / m / d2,
    }[way];
    const w = (total / m - shift) * Math.sqrt(n);
    return normalCdf(-3 * sigma - w) + normalCdf(-3 * sigma + w);
  });
}

describe('estimatedLimitsRunLength', () => {
  test.each(WAYS)('property: %s agrees with simulated limits in rate, mean and deciles', (sigmaFrom) => {
    const [m, shift, count] = [25, 0.3, 8000];
    const found = estimatedLimitsRunLength({ subgroupCount: m, subgroupSize: 5, limitFactor: 3, shift, sigmaFrom });
    const shares = signalShares(sigmaFrom, { m, shift, count });
    const within = (values: number[], exact: number): void => {
      const mean = values.reduce((sum, x) => sum + x, 0) / count;
      const error = Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0)) / count;
      expect(Math.abs(mean - exact) / error).toBeLessThan(4.5);
    };
    within(shares, found.signal_frac);
    within(
      shares.map((p) => 1 / p),
      found.meanRunLength!,
    );
    for (const [decile, share] of [
      [found.lowDecile, 0.1],
      [found.median, 0.5],
      [found.highDecile, 0.9],
    ] as const)
      within(
        shares.map((p) => Number(1 / p <= decile)),
        share,
      );
  });
  test('limit: with very many subgroups the chart with known limits', () => {
    const known = shewhartRunLength({ limitFactor: 3, subgroupSize: 5, shift: 0.4 });
    const found = estimatedLimitsRunLength({
      subgroupCount: 10_000,
      subgroupSize: 50,
      limitFactor: 3,
      shift: 0.4 * Math.sqrt(0.1),
    });
    expect(found.signal_frac / known.signal_frac).toBeCloseTo(1, 3);
    expect(found.meanRunLength! / known.mean).toBeCloseTo(1, 3);
  });
  test('limit: few degrees of freedom leave the mean run length out', () => {
    const found = estimatedLimitsRunLength({ subgroupCount: 4, subgroupSize: 5, limitFactor: 3 });
    expect(found.degreesOfFreedom).toBe(16);
    expect(found.meanRunLength).toBeUndefined();
    expect(found.lowDecile).toBeLessThan(found.median);
    expect(found.median).toBeLessThan(found.highDecile);
  });
  test('property: every way, small and large, gives rising deciles', () => {
    for (const sigmaFrom of WAYS)
      for (const subgroupCount of [2, 10, 200])
        for (const subgroupSize of [2, 5, 25]) {
          const { lowDecile, median, highDecile } = estimatedLimitsRunLength({
            subgroupCount,
            subgroupSize,
            limitFactor: 3,
            sigmaFrom,
          });
          expect(lowDecile).toBeGreaterThanOrEqual(1);
          expect(median).toBeGreaterThan(lowDecile);
          expect(highDecile).toBeGreaterThan(median);
        }
  });
  test.each([{ subgroupCount: 1 }, { subgroupSize: 1 }, { limitFactor: NaN }, { shift: 11 }])(
    'refuses: %j',
    (wrong) => {
      expect(() =>
        estimatedLimitsRunLength({ subgroupCount: 20, subgroupSize: 5, limitFactor: 3, ...wrong }),
      ).toThrow();
    },
  );
});
