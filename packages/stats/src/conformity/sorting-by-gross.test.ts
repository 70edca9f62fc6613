import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { grossCheck } from './gross-check.ts';
import { grossHalfWidth, sortingByGross } from './index.ts';
import { truncatedNormal } from './truncated-normal.ts';

const LOT = Object.freeze({ meanNet: 400, sdNet: 16, meanShell: 97, sdShell: 2.3, net: { low: 370, high: 430 } });
const SORTER = { low: 473, high: 521 };

describe('sortingByGross', () => {
  test('golden: mean 400, sd 16, limits +-30, shell 97 +- 2.3, sorter +-24: 86 % kept, 31 ppm bad (design reference)', () => {
    const found = sortingByGross({ ...LOT, gross: SORTER, allowedBad: 1e-3 });
    expect(found.yield).toBeCloseTo(0.86, 2);
    expect(Math.abs(1e6 * found.badAmongKept - 31)).toBeLessThan(1);
    expect([found.isHelp, found.reasons]).toEqual([true, []]);
  });
  test('golden: normal table: before sorting 2 x 0.0304 are outside 1.875 standard deviations', () => {
    expect(sortingByGross({ ...LOT, gross: SORTER, allowedBad: 1e-3 }).badBefore).toBeCloseTo(2 * 0.0304, 4);
  });
  test('property: the widest limits leave what is allowed, by another search too', () => {
    const { widest } = sortingByGross({ ...LOT, gross: SORTER, allowedBad: 1e-3 });
    const again = sortingByGross({
      ...LOT,
      ...{ gross: { low: 497 - widest!.halfWidth, high: 497 + widest!.halfWidth }, allowedBad: 1e-3 },
    });
    expect(again.badAmongKept).toBeCloseTo(1e-3, 9);
    const { halfWidth } = grossHalfWidth({ ...LOT, falseAccept: again.badAmongKept * again.yield });
    expect(halfWidth).toBeCloseTo(widest!.halfWidth, 6);
  });
  test('property: narrower limits keep less and leave fewer bad; what is kept spreads less', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 40, noNaN: true }), (half) => {
        const at = (h: number) => sortingByGross({ ...LOT, gross: { low: 497 - h, high: 497 + h }, allowedBad: 1e-3 });
        const [wide, narrow] = [at(half), at(0.8 * half)];
        expect(narrow.yield).toBeLessThan(wide.yield);
        expect(narrow.badAmongKept).toBeLessThanOrEqual(wide.badAmongKept);
        expect(narrow.kept!.sd).toBeLessThan(wide.kept!.sd);
        expect(wide.kept!.sd).toBeLessThan(16);
      }),
      { numRuns: 30 },
    );
  });
  test('limit: a shell that spreads as wide as the limits hides the bad ones from any sorter', () => {
    const found = sortingByGross({
      ...{ meanNet: 50, sdNet: 3, meanShell: 48, sdShell: 3, net: { low: 46, high: 54 }, allowedBad: 1e-3 },
      gross: { low: 97.9, high: 98.1 },
    });
    expect(found.leastBad).toBeGreaterThan(1e-3);
    expect(found).toMatchObject({ isHelp: false, reasons: ['leaves-too-many-bad', 'no-limits-reach-it'] });
    expect(found.widest).toBeUndefined();
  });
  test('limit: nothing to sort; a sorter that keeps nothing', () => {
    const good = { ...LOT, sdNet: 4, gross: SORTER, allowedBad: 1e-3 };
    expect(sortingByGross(good)).toMatchObject({ isHelp: false, reasons: ['good-enough-unsorted'] });
    const none = sortingByGross({ ...LOT, gross: { low: 5000 }, allowedBad: 1e-3 });
    expect(none).toMatchObject({ yield: 0, badAmongKept: 0, isHelp: false, reasons: ['nothing-kept'] });
    expect(none.kept).toBeUndefined();
  });
  test('refuses: NaN, nothing allowed, crossed limits, no sorter', () => {
    const ask = { ...LOT, gross: SORTER, allowedBad: 1e-3 };
    expect(() => sortingByGross({ ...ask, allowedBad: NaN })).toThrow('not-finite');
    expect(() => sortingByGross({ ...ask, allowedBad: 0 })).toThrow('out-of-range');
    expect(() => sortingByGross({ ...ask, net: { low: 430, high: 370 } })).toThrow('out-of-range');
    expect(() => sortingByGross({ ...ask, gross: {} })).toThrow('out-of-range');
  });
});

describe('truncatedNormal', () => {
  test('golden: the upper half of a standard normal law: mean sqrt(2/pi), variance 1 - 2/pi', () => {
    const half = truncatedNormal({ mean: 0, sd: 1, inside: { low: 0, high: Infinity } })!;
    expect(half.mean).toBeCloseTo(Math.sqrt(2 / Math.PI), 14);
    expect(half.sd).toBeCloseTo(Math.sqrt(1 - 2 / Math.PI), 14);
  });
  test('limit: all kept, nothing kept', () => {
    const inside = { low: -Infinity, high: Infinity };
    expect(truncatedNormal({ mean: 3, sd: 2, inside })).toEqual({ mean: 3, sd: 2 });
    expect(truncatedNormal({ mean: 0, sd: 1, inside: { low: 60, high: 61 } })).toBeUndefined();
  });
});

describe('grossCheck', () => {
  test('golden: fill 50 +- 1.5 in shell 48 +- 2 is nearly blind, 350 +- 6 in 76 +- 2.5 is not (design reference)', () => {
    const blind = grossCheck({
      ...{ meanNet: 50, sdNet: 1.5, meanShell: 48, sdShell: 2, net: { low: 46.25, high: 53.75 } },
    });
    expect(blind).toMatchObject({ grade: 'blind', scatter: 2, notFill: 0.64, guardedHalfWidth: -0.25 });
    const other = grossCheck({
      ...{ meanNet: 350, sdNet: 6, meanShell: 76, sdShell: 2.5, net: { low: 332.5, high: 367.5 } },
    });
    expect(other.grade).toBe('blurred');
    expect(100 * other.falseAccept).toBeCloseTo(0.1, 2);
    expect(100 * other.falseReject).toBeCloseTo(0.46, 2);
  });
  test('golden: six 12 mg tablets in 190 mg powder: a missing one is 2.25 standard deviations, not seen (design reference)', () => {
    const sdNet = Math.sqrt(6 * 0.3 * 0.3 + 4.75 * 4.75);
    const found = grossCheck({
      ...{ meanNet: 262, sdNet, meanShell: 97, sdShell: 2.3, net: { low: 242, high: 282 }, fault: -12 },
    });
    expect(found.fault!.inSd).toBeCloseTo(2.25, 2);
    // Normal table: Phi(-0.75) = 0.2266.
    expect(found.fault!.seen).toBeCloseTo(0.2266, 2);
    expect(found).toMatchObject({ grade: 'blind', reasons: ['fault-not-seen'] });
  });
  test('limit: light even shells leave the check honest', () => {
    expect(grossCheck({ ...LOT, fault: 120 })).toMatchObject({ grade: 'honest', reasons: [] });
  });
  test('refuses: NaN, no fault at all, one limit', () => {
    expect(() => grossCheck({ ...LOT, fault: NaN })).toThrow('not-finite');
    expect(() => grossCheck({ ...LOT, fault: 0 })).toThrow('out-of-range');
    expect(() => grossCheck({ ...LOT, net: { low: 370, high: NaN } })).toThrow('not-finite');
  });
});
