import { z } from 'zod';

/**
 * Schema of a mapping in which only the known keys may stand, for the plain forms inside other schemas. The message of
 * an issue is the list of the keys where one is unknown, else what would be allowed.
 *
 * @param shape - schema by key
 * @param what - one phrase for editors
 * @returns the schema
 */
export function strictMapping<S extends z.core.$ZodShape>(shape: S, what: string): z.ZodObject<S, z.core.$strict> {
  const keys = Object.keys(shape).join(', ');
  const error: z.core.$ZodErrorMap = (issue) => (issue.code === 'unrecognized_keys' ? keys : `a mapping with ${keys}`);
  return z.strictObject(shape, { error }).meta({ description: what });
}
