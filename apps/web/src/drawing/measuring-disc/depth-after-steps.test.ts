import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { depthAfterDrag } from './depth-after-drag.ts';
import { depthAfterSteps } from './depth-after-steps.ts';

const machine = { min_mm: 0, max_mm: 8 };

// Expected by hand: a step of 0.1 mm, deeper is down.
describe('depthAfterSteps', () => {
  test.each([
    [3.5, 1, 3.6],
    [3.5, -1, 3.4],
    [3.5, 10, 4.5],
    [0.3, -3, 0],
    [7.9, 1, 8],
  ])('golden: %s mm and %s steps is %s mm, without a tail of digits', (depth_mm, count, expected_mm) => {
    expect(depthAfterSteps({ depth_mm, step_mm: 0.1, machine }, count)).toEqual({
      kind: 'depth',
      depth_mm: expected_mm,
    });
  });
  test.each([
    [0, -1],
    [8, 1],
    [3.5, 100],
    [NaN, 1],
  ])('refuses: from %s mm, %s steps leave the machine; nothing is clamped', (depth_mm, count) => {
    expect(depthAfterSteps({ depth_mm, step_mm: 0.1, machine }, count).kind).toBe('beyond-machine');
  });
  test('property: as many steps back as there are the same depth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 80 }), fc.integer({ min: 0, max: 80 }), (from, to) => {
        const there = depthAfterSteps({ depth_mm: from / 10, step_mm: 0.1, machine }, to - from);
        const back = depthAfterSteps({ depth_mm: there.depth_mm, step_mm: 0.1, machine }, from - to);
        expect(back).toEqual({ kind: 'depth', depth_mm: from / 10 });
      }),
      { seed: 1 },
    );
  });
});

// Expected by hand: at 20 px/mm a step of 0.1 mm is 2 px.
describe('depthAfterDrag', () => {
  test.each([
    [20, 4.5],
    [-20, 2.5],
    [3.2, 3.7],
    [0.9, 3.5],
    [0, 3.5],
  ])('golden: %s px down from 3.5 mm is %s mm, in whole steps', (down_px, expected_mm) => {
    const found = depthAfterDrag({ step_mm: 0.1, machine }, { from_mm: 3.5, down_px, px_per_mm: 20 });
    expect(found).toEqual({ kind: 'depth', depth_mm: expected_mm });
  });
  test('refuses: a drag beyond the machine, and a drawing whose scale is not known', () => {
    const lever = { step_mm: 0.1, machine };
    expect(depthAfterDrag(lever, { from_mm: 3.5, down_px: 200, px_per_mm: 20 }).kind).toBe('beyond-machine');
    expect(depthAfterDrag(lever, { from_mm: 3.5, down_px: 20, px_per_mm: NaN }).kind).toBe('beyond-machine');
  });
});
