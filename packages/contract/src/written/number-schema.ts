import { allowedRange } from '@fillwright/engine/catalogue';
import { z } from 'zod';
import type { NumberLimits } from './number-limits.ts';

/**
 * Schema of one number. The message of every issue is the allowed range, which is what a person has to be told.
 *
 * @param limits - meaning, unit and range
 * @param whole - `whole` for counts
 * @returns the schema, described for editors
 */
export function numberSchema(limits: NumberLimits, whole?: 'whole'): z.ZodNumber {
  const error = `a ${whole === undefined ? '' : 'whole '}number, ${allowedRange(limits)}`;
  let schema: z.ZodNumber = whole === undefined ? z.number({ error }) : z.int({ error });
  if (limits.above !== undefined) schema = schema.gt(limits.above, { error });
  if (limits.min !== undefined) schema = schema.gte(limits.min, { error });
  if (limits.below !== undefined) schema = schema.lt(limits.below, { error });
  if (limits.max !== undefined) schema = schema.lte(limits.max, { error });
  return schema.meta({ description: `${limits.what} (${allowedRange(limits)})` });
}
