import { z } from 'zod';

interface NoteLimits {
  /** One phrase for editors. */
  readonly what: string;
  /** Number of characters, without unit. */
  readonly minLength: Characters;
  readonly maxLength: Characters;
}

/** A number of characters, without unit. */
type Characters = number;

/**
 * Schema of a name or a short note on one line; blanks around it are dropped.
 *
 * @param limits - meaning and length
 * @returns the schema
 */
export function noteSchema({ what, minLength, maxLength }: NoteLimits): z.ZodString {
  const error = `a text of ${minLength} to ${maxLength} characters on one line`;
  return z
    .string({ error })
    .trim()
    .min(minLength, { error })
    .max(maxLength, { error })
    .regex(/^[^\p{Cc}\p{Cs}]*$/u, { error })
    .meta({ description: what });
}
