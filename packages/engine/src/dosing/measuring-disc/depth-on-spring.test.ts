import { describe, expect, test } from 'vitest';
import { depthOnSpring_mm } from './depth-on-spring.ts';
import type { DiscRun } from './disc-run.ts';

// By hand: 480 mg on 40 mm2 under a pin 1 mm deep in a disc of 16 mm are 0.8 g/mL; C = 1 - .6/.8 = .25,
// P = .25 / (2 (.5 - .25)) = .5 MPa, 20 N.
const RUN: DiscRun = Object.freeze({
  boreArea_mm2: 40,
  discHeight_mm: 16,
  depths_mm: [],
  feedDensity_g_per_mL: 0.6,
  refill_ratio: 1,
  captured_mg: 0,
  law: Object.freeze({ kind: 'kawakita', a_frac: 0.5, b_per_MPa: 2, initialDensity_g_per_mL: 0.6 } as const),
  preload_N: 14,
  rate_N_per_mm: 6,
  isRefilledAfterLastPin: false,
});

describe('depthOnSpring_mm', () => {
  test('golden: 14 N + 6 N/mm (2 - 1) mm = 20 N (by hand)', () => {
    expect(depthOnSpring_mm(RUN, { total_mg: 480, set_mm: 2 })).toBeCloseTo(1, 11);
  });
  test('limit: at the stop the bed is infinitely strong: 9 N + 2 N/mm (6.5 - 1) mm = 20 N (by hand)', () => {
    const run = { ...RUN, preload_N: 9, rate_N_per_mm: 2 };
    expect(depthOnSpring_mm(run, { total_mg: 480, set_mm: 6.5 })).toBeCloseTo(1, 11);
  });
  test('limit: a law with NaN in it gives NaN, never a depth', () => {
    const law = { ...RUN.law, a_frac: NaN } as DiscRun['law'];
    expect(depthOnSpring_mm({ ...RUN, law }, { total_mg: 480, set_mm: 2 })).toBeNaN();
  });
});
