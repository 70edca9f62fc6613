import type { WeightsInput } from './weights-input.ts';

/** Fewer capsules than this say nothing of a mean that should move a machine. @source common practice, no source */
const LEAST_COUNT = 10;

/**
 * How many capsules a mean must rest on: those of the plan, 10 at most.
 *
 * @param input - with limits, or without
 * @returns the count
 * @throws nothing
 * @source this project's choice
 */
export function leastCount({ limits }: Pick<WeightsInput, 'limits'>): number {
  return Math.min(LEAST_COUNT, limits?.sampleCount ?? LEAST_COUNT);
}
