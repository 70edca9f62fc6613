import type { z } from 'zod';

/**
 * Message for a mapping that comes in several forms, told apart by one key.
 *
 * @param key - the key
 * @param choices - its values, with commas between
 * @returns what would be allowed: the choices, or such a mapping
 */
export function choiceOf(key: string, choices: string): z.core.$ZodErrorMap {
  return (issue) => (issue.code === 'invalid_union' ? choices : `a mapping with ${key} (${choices}) and its fields`);
}
