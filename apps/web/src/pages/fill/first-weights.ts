import { parameterDraws } from '@fillwright/engine/dosing';

/** Capsules that are drawn one by one. */
export const DOT_COUNT = 100;

/**
 * Where each of the first capsules lies in a heap, in standard deviations from the mean: the same ones for the same seed.
 *
 * @param seed - of the design
 * @returns 100 standard normal coordinates (quasi-random, so that the heap is as even as the law behind it)
 */
export function standardHeap(seed: number): readonly number[] {
  const unit = { key: 'z', shape: 'normal', prior: { basis: 'calibrated', mean: 0, sd: 1, from: 'unit' } } as const;
  return parameterDraws([unit], seed)
    .slice(0, DOT_COUNT)
    .map((values) => values['z'] ?? 0);
}
