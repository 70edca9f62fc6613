import { z } from 'zod';

const pair = z.strictObject({
  netLow_mg: z.number(),
  netHigh_mg: z.number(),
  grossLow_mg: z.number(),
  grossHigh_mg: z.number(),
});

export const cardSchema = z
  .strictObject({
    target_mg: z.number(),
    grossTarget_mg: z.number(),
    sampleCount: z.int(),
    meanAction: pair,
    individualAlert: pair,
    individualAction: pair,
    isAlertAssumed: z.boolean(),
    isSampleCountAssumed: z.boolean(),
    tare: z.strictObject({
      mean_mg: z.number(),
      sd_mg: z.number(),
      shellCount: z.int().min(0).describe('Shells weighed; 0: trade custom, a guess'),
      standardError_mg: z.number().optional(),
      lot: z.string().optional(),
      basis: z.enum(['measured', 'guess']),
    }),
    shellBlur_mg: z.number(),
  })
  .meta({ description: 'Limits the floor weighs against, valid for one shell lot' });

const correction = z.strictObject({
  adjuster: z.string(),
  change_mg_per_step: z.number(),
  step_mm: z.number(),
  example_mg: z.number(),
  exampleStepCount: z.int().describe('Machine steps of the example, a count'),
  brings: z.array(z.string()),
  isOutsideValidated: z.boolean(),
});

export const expectedSchema = z.strictObject({
  low_mg: z.number(),
  high_mg: z.number(),
  roundedTo_mg: z.number(),
  meanLow_mg: z.number(),
  meanHigh_mg: z.number(),
  under: correction.optional(),
  over: correction.optional(),
});

const acceptanceValue = z.strictObject({ median_pct: z.number(), p95_pct: z.number() });

export const outlookSchema = z.strictObject({
  contents: z.array(
    z.strictObject({
      substance: z.string(),
      mean_pct: z.number(),
      unit_pct: z.number(),
      bias_pct: z.number(),
      blend_pct: z.number(),
      acceptanceValue,
      isContentAssumed: z.literal(true).optional(),
    }),
  ),
  tests: z.array(
    z.strictObject({
      test: z.enum(['dosage-units-by-mass', 'dosage-units-by-content', 'uniformity-of-mass', 'uniformity-of-content']),
      use: z.enum(['release', 'in-process']),
      substance: z.string().optional(),
      pass_frac: z.number().min(0).max(1).optional(),
      acceptanceValue: acceptanceValue.optional(),
      isContentAssumed: z.literal(true).optional(),
      verdict: z.enum(['computed', 'cannot-tell']),
    }),
  ),
  bindingIndex: z.int().optional(),
});
