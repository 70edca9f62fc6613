import type { z } from 'zod';
import { numberSchema } from './number-schema.ts';
import { strictMapping } from './strict-mapping.ts';

const LIMITS = { unit: 'mm', min: 0, max: 60 };

/**
 * Schema of a range of lengths: `{min_mm, max_mm}`. That the two are in order is checked with the document.
 *
 * @param what - one phrase for editors
 * @returns the schema
 */
export function rangeSchema(
  what: string,
): z.ZodType<{ min_mm: number; max_mm: number }, { min_mm: number; max_mm: number }> {
  const shape = {
    min_mm: numberSchema({ ...LIMITS, what: 'lower end' }),
    max_mm: numberSchema({ ...LIMITS, what: 'upper end' }),
  };
  return strictMapping(shape, what);
}
