import type { InputFault } from '@fillwright/engine/catalogue';
import type { DocumentRule } from '@fillwright/engine/design';
import { fieldOf } from './field-of.ts';

/**
 * A fault for values that contradict each other.
 *
 * @param rule - the rule that is broken
 * @param path - the value to be looked at first
 * @param facts - the numbers and names that make the contradiction
 * @returns the fault
 */
export function conflictAt(
  rule: DocumentRule,
  path: readonly PropertyKey[],
  facts: NonNullable<InputFault['facts']> = {},
): InputFault {
  return { code: 'conflict', field: fieldOf(path), rule, facts };
}
