import type { WeightsInput } from './weights-input.ts';

/** Two may be equal by the rounding of a balance; three and more that all are were hardly weighed. @source common practice, no source */
const LEAST_COUNT = 3;

/**
 * Whether the weights have no spread at all: copied, or a balance that stands still.
 *
 * @param weights - the capsules
 * @returns true for 3 and more that are all equal
 * @throws nothing
 * @source this project's choice
 */
export function areAllEqual({ capsules }: Pick<WeightsInput, 'capsules'>): boolean {
  return capsules.length >= LEAST_COUNT && capsules.every(({ mass_mg }) => mass_mg === capsules[0]!.mass_mg);
}
