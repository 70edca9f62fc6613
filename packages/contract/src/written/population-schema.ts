import type { Population } from '@fillwright/engine/quantity';
import type { z } from 'zod';
import type { NumberLimits } from './number-limits.ts';
import { numberSchema } from './number-schema.ts';
import { strictMapping } from './strict-mapping.ts';

/**
 * Schema of a property that differs from piece to piece: `{mean, sd, n}` of pieces measured one by one.
 *
 * @param limits - meaning, unit and range of the mean
 * @returns the schema
 */
export function populationSchema(limits: NumberLimits): z.ZodType<Population, Population> {
  const shape = {
    mean: numberSchema(limits),
    sd: numberSchema({ unit: limits.unit, min: 0, max: limits.max ?? 1e6, what: 'standard deviation of the pieces' }),
    n: numberSchema({ unit: '1', min: 1, max: 100_000, what: 'pieces measured' }, 'whole'),
  };
  return strictMapping(shape, limits.what);
}
