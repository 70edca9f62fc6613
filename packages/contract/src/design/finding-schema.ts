import { z } from 'zod';

/** A verdict: code, numbers, rule. */
export const findingSchema = z
  .strictObject({
    code: z.string().describe('Kind of finding; docs/fill.md and the terminal have its sentence'),
    numbers: z.record(z.string(), z.union([z.number(), z.string()])),
    rule: z.string().describe('Catalogue id or short name of the rule'),
  })
  .meta({ description: 'A verdict about a material, a set of parts or a prediction' });
