import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  balanceMinimumWeight,
  crossedGauge,
  globalRisks,
  grossHalfWidth,
  grossMisclassification,
  guardedAcceptance,
  netGivenGross,
  netVarianceFromPairs,
  netVarianceFromSamples,
} from './index.ts';

const TYPICAL = Object.freeze({ meanNet: 350, sdNet: 6, meanShell: 76, sdShell: 2.5 });
const NET = { low: 332.5, high: 367.5 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('grossMisclassification', () => {
  // Sheppard (1899): P(X > 0, Y > 0) = 1/4 + asin(rho)/(2 pi).
  test.each([0.1, 1, 3, 20])('golden: both above their means, shell sd %s (Sheppard 1899)', (sdShell) => {
    const found = grossMisclassification({
      ...{ meanNet: 0, sdNet: 1, meanShell: 5, sdShell, net: { low: 0 }, gross: { low: 5 } },
    });
    const rho = 1 / Math.sqrt(1 + sdShell * sdShell);
    expect(found.goodAccepted).toBeCloseTo(0.25 + Math.asin(rho) / (2 * Math.PI), 13);
    expect(found.falseAccept).toBeCloseTo(found.falseReject, 13);
  });
  test('golden: correlated shells keep to Sheppard too', () => {
    const found = grossMisclassification({
      ...{ meanNet: 0, sdNet: 1, meanShell: 0, sdShell: 1, correlation: -0.4, net: { low: 0 }, gross: { low: 0 } },
    });
    expect(found.correlationNetGross).toBeCloseTo(0.6 / Math.sqrt(1.2), 14);
    expect(found.goodAccepted).toBeCloseTo(0.25 + Math.asin(0.6 / Math.sqrt(1.2)) / (2 * Math.PI), 13);
  });
  test('limit: a shell without spread leaves no wrong decision', () => {
    const found = grossMisclassification({ ...TYPICAL, sdShell: 0, net: NET, gross: { low: 408.5, high: 443.5 } });
    expect([found.falseAccept, found.falseReject]).toEqual([0, 0]);
  });
  test('property: the four shares add up to 1 and to their margins', () => {
    fc.assert(
      fc.property(
        fc.tuple(between(0.01, 20), between(0, 20), between(-0.9, 0.9), between(-30, 30)),
        ([sdNet, sdShell, correlation, shift]) => {
          const gross = { low: 408.5 + shift, high: 443.5 + shift };
          const found = grossMisclassification({ ...TYPICAL, sdNet, sdShell, correlation, net: NET, gross });
          expect(found.goodAccepted + found.falseAccept).toBeCloseTo(found.grossAccepted, 11);
          expect(found.goodAccepted + found.falseReject).toBeCloseTo(found.netInside, 11);
          expect(found.netInside + found.falseAccept + found.badRejected).toBeCloseTo(1, 11);
        },
      ),
      { numRuns: 40 },
    );
  });
  test('refuses: NaN, no spread, crossed limits, no limit', () => {
    const ask = { ...TYPICAL, net: NET, gross: { low: 408.5, high: 443.5 } };
    expect(() => grossMisclassification({ ...ask, meanNet: NaN })).toThrow('not-finite');
    expect(() => grossMisclassification({ ...ask, sdNet: 0 })).toThrow('out-of-range');
    expect(() => grossMisclassification({ ...ask, net: { low: 2, high: 1 } })).toThrow('out-of-range');
    expect(() => grossMisclassification({ ...ask, gross: {} })).toThrow('out-of-range');
    expect(() => grossMisclassification({ ...ask, gross: { low: NaN } })).toThrow('not-finite');
  });
});

describe('grossHalfWidth', () => {
  test('property: the limits found let just that share through', () => {
    const { halfWidth } = grossHalfWidth({ ...TYPICAL, net: NET, falseAccept: 2e-4 });
    const gross = { low: 426 - halfWidth, high: 426 + halfWidth };
    expect(grossMisclassification({ ...TYPICAL, net: NET, gross }).falseAccept).toBeCloseTo(2e-4, 12);
  });
  test('refuses: more than all the bad there are', () => {
    expect(() => grossHalfWidth({ ...TYPICAL, net: NET, falseAccept: 0.5 })).toThrow('out-of-range');
  });
});

describe('netGivenGross', () => {
  test('property: the average probability inside is the share inside', () => {
    // Midpoints of 2000 equal slices of the gross over +-10 sd.
    let [sum, weights] = [0, 0];
    for (let i = 0; i < 2000; i++) {
      const z = -10 + (i + 0.5) / 100;
      const weight = Math.exp(-0.5 * z * z);
      sum += weight * netGivenGross({ ...TYPICAL, gross: 426 + 6.5 * z, net: NET }).probabilityInside;
      weights += weight;
    }
    expect(sum / weights).toBeCloseTo(0.9964620635217778, 10);
  });
  test('refuses: NaN', () => {
    expect(() => netGivenGross({ ...TYPICAL, gross: NaN, net: NET })).toThrow('not-finite');
  });
});

describe('net variance', () => {
  test('golden: by hand, and a negative one is reported', () => {
    const found = netVarianceFromSamples({ gross: [10, 12], shells: [1, 5] });
    expect(found).toEqual({
      ...{ meanNet: 8, varianceGross: 2, varianceShell: 8, varianceNet: -6 },
      ...{ standardError: Math.sqrt(8 + 128), sdNet: undefined },
    });
    expect(netVarianceFromPairs({ gross: [10, 12, 14], shells: [1, 2, 3] })).toMatchObject({
      ...{ varianceNet: 1, covarianceGrossShell: 2, plainDifference: 3, correlationNetShell: 1 },
    });
  });
  test('refuses: unpaired, too few', () => {
    expect(() => netVarianceFromPairs({ gross: [1, 2, 3], shells: [1, 2] })).toThrow('wrong-length');
    expect(() => netVarianceFromPairs({ gross: [1, 2], shells: [1, 2] })).toThrow('sample-size');
    expect(() => netVarianceFromSamples({ gross: [1], shells: [1, 2] })).toThrow('sample-size');
    expect(() => netVarianceFromSamples({ gross: [1, NaN], shells: [1, 2] })).toThrow('not-finite');
  });
});

describe('guarded acceptance and global risks', () => {
  test('golden: a value on its acceptance limit has a specific risk of 2.275 % (normal table)', () => {
    const found = guardedAcceptance({ measured: 2, standardUncertainty: 1, tolerance: { low: 0 } });
    expect(found).toMatchObject({ isAccepted: true, acceptanceLow: 2, acceptanceHigh: undefined });
    expect(found.specificRisk).toBeCloseTo(0.022750131948179, 14);
  });
  test('limit: exact measurement, no risk', () => {
    const risks = globalRisks({ mean: 0, sd: 1, standardUncertainty: 0, tolerance: { low: -2, high: 2 } });
    expect(risks).toMatchObject({ consumerRisk: 0, producerRisk: 0 });
  });
  test('property: global risks are those of a shell without mean', () => {
    const tolerance = { low: -2, high: 2 };
    const risks = globalRisks({ mean: 0.3, sd: 1, standardUncertainty: 0.4, tolerance, guardBand: 0.2 });
    const shares = grossMisclassification({
      ...{ meanNet: 0.3, sdNet: 1, meanShell: 0, sdShell: 0, sdWeighing: 0.4, net: tolerance },
      gross: { low: -1.8, high: 1.8 },
    });
    expect(risks.consumerRisk).toBeCloseTo(shares.falseAccept, 15);
    expect(risks.producerRisk).toBeCloseTo(shares.falseReject, 15);
  });
  test('refuses: NaN, a guard band that leaves nothing', () => {
    expect(() => guardedAcceptance({ measured: NaN, standardUncertainty: 1, tolerance: { low: 0 } })).toThrow(
      'not-finite',
    );
    const ask = { mean: 0, sd: 1, standardUncertainty: 0.1, tolerance: { low: -1, high: 1 } };
    expect(() => globalRisks({ ...ask, guardBand: 1 })).toThrow('out-of-range');
  });
});

describe('crossedGauge', () => {
  test('golden: two parts, two appraisers, two trials by hand', () => {
    const found = crossedGauge({
      cells: [
        [
          [1, 3],
          [2, 4],
        ],
        [
          [5, 7],
          [8, 10],
        ],
      ],
      tolerance: 12,
    });
    expect(found.parts.sumOfSquares).toBeCloseTo(50, 12);
    expect(found.appraisers.sumOfSquares).toBeCloseTo(8, 12);
    expect(found.interaction.sumOfSquares).toBeCloseTo(2, 12);
    expect(found.repeatability.sumOfSquares).toBeCloseTo(8, 12);
    expect(found.withInteraction.varianceAppraiser).toBeCloseTo(1.5, 12);
    expect(found.withInteraction.gaugeOfTolerance_pct).toBeCloseTo(50 * Math.sqrt(3.5), 10);
  });
  test('limit: readings all alike tell nothing, and say so', () => {
    const found = crossedGauge({
      cells: [
        [
          [1, 1],
          [1, 1],
        ],
        [
          [1, 1],
          [1, 1],
        ],
      ],
    });
    expect(found).toMatchObject({ fInteraction: undefined, isPooled: false });
    expect(found.withInteraction).toMatchObject({ gaugeOfStudy_pct: undefined, categories: undefined });
  });
  test('refuses: missing trials, one part, NaN', () => {
    expect(() =>
      crossedGauge({
        cells: [
          [
            [1, 2],
            [1, 2],
          ],
          [[1, 2], [1]],
        ],
      }),
    ).toThrow('wrong-length');
    expect(() =>
      crossedGauge({
        cells: [
          [
            [1, 2],
            [1, 2],
          ],
        ],
      }),
    ).toThrow('sample-size');
    expect(() =>
      crossedGauge({
        cells: [
          [
            [1, 2],
            [1, 2],
          ],
          [
            [1, 2],
            [1, NaN],
          ],
        ],
      }),
    ).toThrow('not-finite');
  });
});

describe('balanceMinimumWeight', () => {
  test('golden: a balance that always reads the same needs 820 d (USP <41>, secondary)', () => {
    const weighings = Array.from({ length: 10 }, () => 5000);
    const found = balanceMinimumWeight({ weighings, readability: 0.01, smallestNet: 8.2 });
    expect(found.isFloorUsed).toBe(true);
    expect(found.minimumWeight).toBeCloseTo(8.2, 12);
  });
  test('refuses: nine weighings', () => {
    const weighings = Array.from({ length: 9 }, () => 5000);
    expect(() => balanceMinimumWeight({ weighings, readability: 0.01, smallestNet: 8 })).toThrow('sample-size');
  });
});
