import { z } from 'zod';

interface ListLimits {
  readonly minCount: number;
  readonly maxCount: number;
  readonly what: string;
}

/**
 * Schema of a list.
 *
 * @param item - schema of one item
 * @param limits - how many items, and what they are
 * @returns the schema
 */
export function listSchema<T extends z.core.$ZodType>(item: T, limits: ListLimits): z.ZodArray<T> {
  const { minCount, maxCount, what } = limits;
  const error = `a list of ${minCount} to ${maxCount}`;
  return z
    .array(item, { error })
    .min(minCount, { error })
    .max(maxCount, { error })
    .meta({ description: `${what} (${minCount} to ${maxCount})` });
}
