import type { CheckCase } from '@fillwright/engine/catalogue';
import { z } from 'zod';

const bounds = {
  abs: z.number().nonnegative().exactOptional().meta({ description: 'absolute, in the unit of the value' }),
  rel: z.number().nonnegative().exactOptional().meta({ description: 'relative to the expected value, 0.01 is 1 %' }),
};
const name = z.string().trim().min(1);

/** Expected values hold no infinity (`1e999`): within a relative tolerance anything would agree with it. */
function hasFiniteNumbers(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  return typeof value !== 'object' || value === null || Object.values(value).every(hasFiniteNumbers);
}

/** One check value with its source, as files bring it. */
export const checkCaseSchema = z
  .strictObject({
    id: name.meta({ description: 'name of the case, used once in a file' }),
    group: name.meta({ description: 'heading under which the report counts the case' }),
    method: name.meta({ description: 'id of the method, as `fillwright methods` lists it' }),
    inputs: z.record(z.string(), z.unknown()).meta({ description: 'values by the keys of the method' }),
    expected: z
      .unknown()
      .refine((value) => value !== undefined && hasFiniteNumbers(value))
      .meta({ description: 'the value of a method with one output, or values by output key' }),
    tolerance: z
      .strictObject({
        ...bounds,
        fields: z.record(z.string(), z.strictObject(bounds)).exactOptional().meta({ description: 'by output key' }),
      })
      .meta({ description: 'a number passes within the larger of abs and rel times |expected|; {} means exactly' }),
    source: name.meta({ description: 'where the expected value comes from' }),
  })
  .meta({ id: 'check-case', title: 'Check case' }) satisfies z.ZodType<CheckCase>;

/** A file of check cases: a list, or an object that holds the list as `cases`. */
export const checkCaseFileSchema = z
  .union([z.array(checkCaseSchema), z.strictObject({ cases: z.array(checkCaseSchema) })])
  .meta({ id: 'check-cases', title: 'File of check cases' });
