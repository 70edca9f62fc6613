import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adjustmentSequence, bestDeadBand, boundedAdjustment, integralAdjustmentRatio } from '#charts';
import { fillNormals, seedStream } from '#random';

describe('boundedAdjustment', () => {
  // Table of Box & Luceno (1997), as reprinted by Montgomery (from memory): interval and increase of the sd in %.
  test.each([
    [0.1, 0.5, 32, 2.4],
    [0.1, 1, 112, 9],
    [0.3, 1, 16, 10],
    [0.5, 2, 21, 35],
  ])('golden: lambda %s, L %s: %s and %s %%', (...[lambda, deadBand, interval, increase]) => {
    const found = boundedAdjustment({ lambda, deadBand });
    expect(Math.abs(found.interval - interval)).toBeLessThan(0.6);
    expect(Math.abs(found.sdIncrease_pct - increase)).toBeLessThan(0.6);
  });
  test.each([
    [0.3, 0.6],
    [0.2, 1],
  ])('property: lambda %s, L %s agrees with a simulated process under the rule', (lambda, deadBand) => {
    const stream = seedStream({ seed: 31 });
    const shocks = new Float64Array(400_000);
    fillNormals(stream, shocks);
    let level = 0;
    const disturbance = [...shocks].map((shock) => {
      const value = level + shock;
      level += lambda * shock;
      return value;
    });
    const steps = adjustmentSequence({ disturbance, target: 0, lambda, deadBand, gain: 1 });
    const changes = steps.filter(({ change }) => change !== 0).length;
    const meanSquare = steps.reduce((sum, { observed }) => sum + observed * observed, 0) / steps.length;
    const { interval, meanSquareRatio } = boundedAdjustment({ lambda, deadBand });
    // Renewals have a coefficient of variation below 1, squares of normal values one of sqrt 2: 4.5 standard errors.
    expect(Math.abs(steps.length / changes / interval - 1)).toBeLessThan(4.5 / Math.sqrt(changes));
    expect(Math.abs(meanSquare / meanSquareRatio - 1)).toBeLessThan((4.5 * Math.SQRT2) / Math.sqrt(steps.length));
  });
  test.each([2, 5, 20, 80])('property: within 1 %% of the approximations of the book at B = %s', (band) => {
    const found = boundedAdjustment({ lambda: 1, deadBand: band });
    expect(Math.abs(found.approximateInterval / found.interval - 1)).toBeLessThan(0.01);
    expect(Math.abs(found.approximateMeanSquare / found.meanSquare - 1)).toBeLessThan(0.015);
  });
  test('limit: a band of nothing changes every time; a wide one takes (B + 0.583)^2 steps', () => {
    const narrow = boundedAdjustment({ lambda: 1, deadBand: 1e-6 });
    expect(narrow.interval).toBeCloseTo(1, 5);
    expect(narrow.meanSquareRatio).toBeCloseTo(1, 9);
    // Siegmund (1985): mean overshoot of normal steps 0.5826; the next term of the exit time is a constant below 1.
    expect(Math.abs(boundedAdjustment({ lambda: 1, deadBand: 90 }).interval - 90.5826 ** 2)).toBeLessThan(1);
  });
  test.each([{ lambda: 0 }, { lambda: NaN }, { deadBand: 0 }, { deadBand: 101 }, { delayCount: 1 }])(
    'refuses: %j',
    (wrong) => {
      expect(() => boundedAdjustment({ lambda: 0.3, deadBand: 1, ...wrong })).toThrow();
    },
  );
});

describe('bestDeadBand', () => {
  test.each([0.5, 10, 1000])('property: no band on a grid is cheaper at change cost %s', (changeCost) => {
    const [lambda, offTargetCost] = [0.2, 2];
    const best = bestDeadBand({ lambda, changeCost, offTargetCost });
    for (let band = 0.05; band < 15; band *= 1.2) {
      const { interval, meanSquareRatio } = boundedAdjustment({ lambda, deadBand: band });
      expect(changeCost / interval + offTargetCost * meanSquareRatio).toBeGreaterThan(best.cost * (1 - 1e-6));
    }
    expect(best.cost).toBeLessThanOrEqual(best.everyTimeCost);
  });
  test('limit: free changes: the narrowest band', () => {
    expect(bestDeadBand({ lambda: 0.2, changeCost: 0, offTargetCost: 1 }).interval).toBeCloseTo(1, 1);
  });
  test.each([{ lambda: 0 }, { changeCost: -1 }, { changeCost: NaN }, { offTargetCost: 0 }, { changeCost: 1e12 }])(
    'refuses: %j',
    (wrong) => {
      expect(() => bestDeadBand({ lambda: 0.2, changeCost: 1, offTargetCost: 1, ...wrong })).toThrow();
    },
  );
});

describe('integralAdjustmentRatio', () => {
  test('golden: full correction doubles the variance of pure noise; G = lambda is best (Deming funnel, rule 2)', () => {
    expect(integralAdjustmentRatio({ lambda: 0, correction: 1 })).toBe(2);
    expect(integralAdjustmentRatio({ lambda: 0.3, correction: 0.3 })).toBe(1);
  });
  test('property: agrees with the sum of squared weights of the closed loop', () => {
    const share = fc.double({ min: 0.05, max: 1.9, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), share, (lambda, correction) => {
        // e = (1 - (1 - lambda) B) / (1 - (1 - G) B) a: weights 1, (lambda - G) (1 - G)^i.
        let [sum, weight] = [1, lambda - correction];
        for (let i = 0; i < 2000; i++) {
          sum += weight * weight;
          weight *= 1 - correction;
        }
        expect(integralAdjustmentRatio({ lambda, correction }) / sum).toBeCloseTo(1, 10);
      }),
      { seed: 32 },
    );
  });
  test.each([{ correction: 0 }, { correction: 2 }, { correction: NaN }, { lambda: -0.1 }])('refuses: %j', (wrong) => {
    expect(() => integralAdjustmentRatio({ lambda: 0.2, correction: 0.2, ...wrong })).toThrow();
  });
});

describe('adjustmentSequence', () => {
  const run = { target: 0, lambda: 0.5, deadBand: 1, gain: 2 };
  test('golden: by hand: 2 -> forecast 1, change -0.5; then 2 - 1 = 1 -> forecast 0.5', () => {
    expect(adjustmentSequence({ ...run, disturbance: [2, 2] })).toEqual([
      { observed: 2, forecast: 1, change: -0.5 },
      { observed: 1, forecast: 0.5, change: 0 },
    ]);
  });
  test('golden: by hand: a change capped at 0.2 leaves 1 - 0.4 = 0.6 in the forecast', () => {
    const [, second] = adjustmentSequence({ ...run, maxChange: 0.2, disturbance: [2, 2] });
    expect(second!.observed).toBeCloseTo(1.6, 12);
    expect(second!.forecast).toBeCloseTo(1.1, 12);
  });
  test.each([
    { disturbance: [] },
    { disturbance: [NaN] },
    { gain: 0 },
    { maxChange: 0 },
    { deadBand: -1 },
    { lambda: 2 },
  ])('refuses: %j', (wrong) => {
    expect(() => adjustmentSequence({ ...run, disturbance: [1], ...wrong })).toThrow();
  });
});
