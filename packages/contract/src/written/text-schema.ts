import { z } from 'zod';

/**
 * Schema of a text that is not empty.
 *
 * @param what - one phrase for editors
 * @returns the schema
 */
export function textSchema(what: string): z.ZodString {
  const error = 'a text of 1 to 500 characters';
  return z.string({ error }).min(1, { error }).max(500, { error }).regex(/\S/, { error }).meta({ description: what });
}
