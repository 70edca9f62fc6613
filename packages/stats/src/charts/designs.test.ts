import { describe, expect, test } from 'vitest';
import {
  cusumDecisionInterval,
  cusumDesign,
  cusumRunLength,
  ewmaDesign,
  ewmaDesignMap,
  ewmaLimitFactor,
  ewmaRunLength,
  shewhartRunLength,
} from '#charts';

describe('ewmaLimitFactor', () => {
  // Lucas & Saccucci (1990): widths for 500 in control (from memory).
  test.each([
    [0.4, 3.054],
    [0.25, 2.998],
    [0.2, 2.962],
    [0.1, 2.814],
    [0.05, 2.615],
  ])('golden: lambda %s needs L = %s', (lambda, printed) => {
    expect(Math.abs(ewmaLimitFactor({ lambda, inControlRunLength: 500 }) - printed)).toBeLessThan(1e-3);
  });
  test.each([2, 20, 370, 1e6])('property: run length %s is met for every lambda', (inControlRunLength) => {
    for (const lambda of [0.01, 0.05, 0.3, 1]) {
      const limitFactor = ewmaLimitFactor({ lambda, inControlRunLength });
      expect(ewmaRunLength({ lambda, limitFactor, shift: 0 }) / inControlRunLength).toBeCloseTo(1, 7);
    }
  });
  test.each([{ lambda: 0 }, { inControlRunLength: 1 }, { inControlRunLength: NaN }])('refuses: %j', (wrong) => {
    expect(() => ewmaLimitFactor({ lambda: 0.1, inControlRunLength: 370, ...wrong })).toThrow();
  });
});

describe('ewmaDesign', () => {
  test.each([0.5, 1, 2])('property: no lambda on a grid finds a shift of %s sooner', (shift) => {
    const best = ewmaDesign({ shift, inControlRunLength: 370 });
    expect(ewmaRunLength({ ...best, shift: 0 }) / 370).toBeCloseTo(1, 7);
    for (let lambda = 0.02; lambda <= 1; lambda += 0.02) {
      const limitFactor = ewmaLimitFactor({ lambda, inControlRunLength: 370 });
      expect(ewmaRunLength({ lambda, limitFactor, shift })).toBeGreaterThan(best.runLength - 1e-5);
    }
  });
  test('limit: for a large shift nearly the chart without memory', () => {
    const plain = shewhartRunLength({ limitFactor: 3, subgroupSize: 1, shift: 5 }).mean;
    expect(ewmaDesign({ shift: 5, inControlRunLength: 370.4 }).runLength).toBeLessThan(plain + 1e-4);
  });
  test.each([{ shift: 0 }, { shift: NaN }, { inControlRunLength: 5 }])('refuses: %j', (wrong) => {
    expect(() => ewmaDesign({ shift: 1, inControlRunLength: 370, ...wrong })).toThrow();
  });
});

describe('ewmaDesignMap', () => {
  const lambdas = [0.02, 0.07, 0.2, 0.55, 1];
  const limitFactors = Array.from({ length: 61 }, (_, i) => 1.5 + i * 0.05);
  test('property: agrees with the equation at every point', () => {
    const { inControl, atShift } = ewmaDesignMap({ lambdas, limitFactors, shift: 0.8 });
    lambdas.forEach((lambda, i) => {
      limitFactors.forEach((limitFactor, j) => {
        const at = i * limitFactors.length + j;
        expect(Math.abs(inControl[at]! / ewmaRunLength({ lambda, limitFactor, shift: 0 }) - 1)).toBeLessThan(1e-6);
        expect(Math.abs(atShift[at]! / ewmaRunLength({ lambda, limitFactor, shift: 0.8 }) - 1)).toBeLessThan(1e-6);
      });
    });
  });
  test('limit: a short axis is solved point by point', () => {
    const { inControl } = ewmaDesignMap({ lambdas: [0.1], limitFactors: [2.7], shift: 0 });
    expect(inControl[0]).toBeCloseTo(ewmaRunLength({ lambda: 0.1, limitFactor: 2.7, shift: 0 }), 6);
  });
  test.each([{ lambdas: [] }, { limitFactors: [] }, { lambdas: [NaN] }, { limitFactors: [0.5] }, { shift: 6 }])(
    'refuses: %j',
    (wrong) => {
      expect(() => ewmaDesignMap({ lambdas, limitFactors, shift: 1, ...wrong })).toThrow();
    },
  );
});

describe('cusumDecisionInterval', () => {
  // Hawkins (1993): h for 370 in control, two sums (from memory, as reprinted by Montgomery).
  test.each([
    [0.25, 8.01],
    [0.5, 4.77],
    [0.75, 3.34],
    [1, 2.52],
    [1.25, 1.99],
    [1.5, 1.61],
  ])('golden: k %s needs h = %s', (reference, printed) => {
    expect(Math.abs(cusumDecisionInterval({ reference, inControlRunLength: 370 }) - printed)).toBeLessThan(6e-3);
  });
  test.each([10, 100, 1e5])('property: run length %s is met, with and without head start', (inControlRunLength) => {
    for (const headStart_frac of [0, 0.5])
      for (const reference of [0.25, 0.5, 1]) {
        const decisionInterval = cusumDecisionInterval({ reference, inControlRunLength, headStart_frac });
        const { twoSided } = cusumRunLength({ reference, decisionInterval, shift: 0, headStart_frac });
        expect(twoSided / inControlRunLength).toBeCloseTo(1, 7);
      }
  });
  test.each([{ reference: 0 }, { reference: NaN }, { inControlRunLength: 1 }, { headStart_frac: 1 }])(
    'refuses: %j',
    (wrong) => {
      expect(() => cusumDecisionInterval({ reference: 0.5, inControlRunLength: 370, ...wrong })).toThrow();
    },
  );
});

describe('cusumDesign', () => {
  test.each([0.5, 1, 2])(
    'property: the reference value is close to half the shift %s, and no other on a grid is better',
    (shift) => {
      const best = cusumDesign({ shift, inControlRunLength: 370 });
      expect(Math.abs(best.reference / shift - 0.5)).toBeLessThan(0.05);
      for (let reference = 0.35 * shift; reference < 0.75 * shift; reference += 0.05 * shift) {
        const decisionInterval = cusumDecisionInterval({ reference, inControlRunLength: 370 });
        expect(cusumRunLength({ reference, decisionInterval, shift }).twoSided).toBeGreaterThan(best.runLength - 1e-5);
      }
    },
  );
  test.each([{ shift: 0 }, { shift: NaN }, { inControlRunLength: 5 }])('refuses: %j', (wrong) => {
    expect(() => cusumDesign({ shift: 1, inControlRunLength: 370, ...wrong })).toThrow();
  });
});
