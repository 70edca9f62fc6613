import { z } from 'zod';

/**
 * Schema of a calendar date as ISO 8601 writes it.
 *
 * @param what - one phrase for editors
 * @returns the schema
 */
export function dateSchema(what: string): z.ZodISODate {
  return z.iso.date({ error: 'a date as 2026-03-02' }).meta({ description: `${what}, as 2026-03-02` });
}
