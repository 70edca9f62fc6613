import { describe, expect, test } from 'vitest';
import { DOT_COUNT, standardHeap } from './first-weights.ts';
import { bellPath, HEAP, heapPath } from './heap-path.ts';
import { weightsAxis } from './weights-axis.ts';

describe('standardHeap', () => {
  test('property: the same seed gives the same capsules, another seed others', () => {
    expect(standardHeap(1)).toEqual(standardHeap(1));
    expect(standardHeap(1)).not.toEqual(standardHeap(2));
  });
  // Standard normal: mean 0, sd 1, 68.3 % within one sd (tables of the normal distribution); 100 draws are within a tenth.
  test('golden: a hundred draws of the standard normal', () => {
    const heap = standardHeap(1);
    expect(heap).toHaveLength(DOT_COUNT);
    const mean = heap.reduce((sum, z) => sum + z, 0) / DOT_COUNT;
    const sd = Math.sqrt(heap.reduce((sum, z) => sum + (z - mean) ** 2, 0) / (DOT_COUNT - 1));
    expect(Math.abs(mean)).toBeLessThan(0.1);
    expect(Math.abs(sd - 1)).toBeLessThan(0.1);
    expect(Math.abs(heap.filter((z) => Math.abs(z) < 1).length - 68.3)).toBeLessThan(5);
  });
});

describe('heapPath', () => {
  test('golden: dots of one column lie on each other, the others beside them', () => {
    const dots = heapPath([0.1, 0.1, 0.3]).match(/M[\d.]+ [\d.]+h0/g) ?? [];
    expect(dots).toHaveLength(3);
    const heights = dots.map((dot) => Number(/ ([\d.]+)h/.exec(dot)?.[1]));
    expect(heights[0]).toBeGreaterThan(heights[1] ?? NaN);
    expect(heights[2]).toBe(heights[0]);
  });
  test('limit: a heap never grows into the names of the limits', () => {
    const heights = [...heapPath(new Array<number>(100).fill(0.5)).matchAll(/ ([\d.]+)h/g)].map((found) =>
      Number(found[1]),
    );
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(HEAP.top);
  });
  test('limit: NaN draws nothing', () => {
    expect(heapPath([NaN])).toBe('');
  });
});

describe('bellPath', () => {
  test('golden: highest in the middle: height above the axis', () => {
    const points = [...bellPath({ sd: 0.1, height: 60 }).matchAll(/(-?[\d.]+) ([\d.]+)/g)];
    const ys = points.map((found) => Number(found[2]));
    expect(Math.min(...ys)).toBeCloseTo(HEAP.height - 60, 1);
    expect(Number(points[ys.indexOf(Math.min(...ys))]?.[1])).toBeCloseTo(0, 0);
  });
});

describe('weightsAxis', () => {
  const seen = { mean_mg: 430, unit_mg: 9.5, low_mg: 380, high_mg: 475, singleLow_mg: 397.75, singleHigh_mg: 462.25 };
  test('property: forecast, limits and heap lie on it, its ends on tens', () => {
    const { from_mg, to_mg, at_frac } = weightsAxis(seen);
    expect([from_mg % 10, to_mg % 10]).toEqual([0, 0]);
    for (const mass_mg of [380, 475, 397.75, 462.25, 430 - 2 * 9.5, 430 + 2 * 9.5]) {
      expect(at_frac(mass_mg)).toBeGreaterThan(0);
      expect(at_frac(mass_mg)).toBeLessThan(1);
    }
  });
  test('limit: a lever far away takes the axis along', () => {
    expect(weightsAxis({ ...seen, mean_mg: 200 }).from_mg).toBeLessThan(200);
  });
});
