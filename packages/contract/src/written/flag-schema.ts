import { z } from 'zod';

/**
 * Schema of a yes or no.
 *
 * @param what - one phrase for editors
 * @returns the schema
 */
export function flagSchema(what: string): z.ZodBoolean {
  return z.boolean({ error: 'true or false' }).meta({ description: `${what}: true or false` });
}
