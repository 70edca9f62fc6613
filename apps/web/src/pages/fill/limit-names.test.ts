import { describe, expect, test } from 'vitest';
import { limitNames } from './limit-names.ts';
import { weightsAxis } from './weights-axis.ts';

// Limits of the worked example (practice.md, section 7): 430 mg, single 7.5 %, mean 3 %.
const LIMITS = { singleLow_mg: 397.75, singleHigh_mg: 462.25, meanLow_mg: 417.1, meanHigh_mg: 442.9 };
const at = (low_mg: number, high_mg: number): ReturnType<typeof limitNames> =>
  limitNames({ ...LIMITS, axis: weightsAxis({ ...LIMITS, mean_mg: 422, unit_mg: 9.24, low_mg, high_mg }) });

describe('limitNames', () => {
  test('golden: over the middle of the mean limits where there is room', () => {
    const { mean_frac } = at(380, 475);
    const axis = weightsAxis({ ...LIMITS, mean_mg: 422, unit_mg: 9.24, low_mg: 380, high_mg: 475 });
    expect(mean_frac).toBeCloseTo(axis.at_frac(430), 9);
  });
  test('regression: on soft springs it does not run into the name of the upper single limit', () => {
    const { isHighInside, mean_frac } = at(380, 450);
    expect(isHighInside).toBe(true);
    const axis = weightsAxis({ ...LIMITS, mean_mg: 422, unit_mg: 9.24, low_mg: 380, high_mg: 450 });
    // "462 single limit" takes 95 px and "mean limits" 72 px of the 540 px that the picture has on a desk's screen.
    expect(mean_frac + 36 / 540).toBeLessThan(axis.at_frac(462.25) - 100 / 540);
  });
});
