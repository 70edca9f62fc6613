import { z } from 'zod';

/**
 * Schema of one of a few words.
 *
 * @param choices - the words, in the order in which they are listed
 * @param what - one phrase for editors
 * @returns the schema
 */
export function choiceSchema<const C extends string>(choices: readonly C[], what: string): z.ZodLiteral<C> {
  return z.literal(choices, { error: choices.join(', ') }).meta({ description: `${what}: ${choices.join(', ')}` });
}
