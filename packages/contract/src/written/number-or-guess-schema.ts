import { allowedRange } from '@fillwright/engine/catalogue';
import { z } from 'zod';
import type { NumberLimits } from './number-limits.ts';
import { numberSchema } from './number-schema.ts';

/**
 * Schema of a number without a spread for which the engine has a guess: a number, or the word `guess`.
 *
 * @param limits - meaning, unit and range
 * @param whole - `whole` for counts
 * @returns the schema; its output is undefined where the guess of the engine is wanted
 */
export function numberOrGuessSchema(
  limits: NumberLimits,
  whole?: 'whole',
): z.ZodType<InUnitOfKey | undefined, InUnitOfKey | 'guess'> {
  const range = allowedRange(limits);
  return z
    .union([numberSchema(limits, whole), z.literal('guess')], {
      error: `a ${whole === undefined ? '' : 'whole '}number, ${range}, or guess`,
    })
    .meta({ description: `${limits.what} (${range}), or guess (same as left out)` })
    .transform((value) => (value === 'guess' ? undefined : value));
}

/** A number in the unit of the key it stands under. */
type InUnitOfKey = number;
