import { z } from 'zod';
import { cardSchema, expectedSchema, outlookSchema } from './card-schema.ts';
import { findingSchema } from './finding-schema.ts';
import { gainsSchema, intervalSchema, predictionSchema, settingsSchema } from './prediction-schema.ts';

const geometrySchema = z.strictObject({
  kind: z.literal('known'),
  size: z.string(),
  bodyInnerRadius_mm: z.number(),
  capInnerRadius_mm: z.number(),
  bodyWall_mm: z.number(),
  bodyLength_mm: z.number(),
  capHeadroom_mm: z.number(),
  closedLength_mm: z.number(),
  bodyVolume_mm3: z.number(),
  chartVolume_mm3: z.number(),
});

const candidateSchema = z.strictObject({
  size: z.string(),
  geometry: geometrySchema,
  method: z.string(),
  suitability: z.strictObject({
    grade: z.enum(['suitable', 'possible', 'unsuitable']),
    reasons: z.array(findingSchema),
  }),
  settings: settingsSchema,
  prediction: predictionSchema,
  afterSetUp: z.strictObject({
    capsulesOutside_frac: z.number().min(0).max(1),
    sampleMeansOutside_frac: z.number().min(0).max(1),
    setUp_pct: z.number(),
  }),
  merits: z.strictObject({
    capsulesOutside_frac: z.number(),
    sampleMeansOutside_frac: z.number(),
    unit_pct: z.number(),
    volumeMargin_frac: z.number(),
    adjusterMargin_frac: z.number(),
    speed_per_h: z.number(),
    partsToChangeCount: z.int(),
    onSpringCount: z.int(),
  }),
});

const rankedSchema = candidateSchema.extend({
  rank: z.int().min(1),
  decidedBy: z
    .enum([
      'sample-means-outside',
      'stations-on-spring',
      'parts-to-change',
      'adjuster-margin',
      'volume-margin',
      'speed',
      'name',
    ])
    .optional()
    .describe('What puts it before the next one'),
  interval: intervalSchema,
  gains: gainsSchema,
  outlook: outlookSchema,
  sheet: z.array(
    z.strictObject({
      adjuster: z.string(),
      part: z.string().optional(),
      isMounted: z.boolean().optional(),
      station: z.int().optional().describe('Number of the station'),
      depth_mm: z.number().optional(),
      reading_division: z.number().optional(),
      step_division: z.number().optional(),
      size: z.record(z.string(), z.number()).optional(),
    }),
  ),
  card: cardSchema.optional(),
  expected: expectedSchema,
});

/** What `fillwright design --json` prints. Checked before it is sent: NaN would become null without a word. */
export const designSchema = z
  .strictObject({
    format: z.literal(1).describe('Version of this format, no unit'),
    product: z.strictObject({ code: z.string(), name: z.string() }),
    filler: z.strictObject({ id: z.string(), name: z.string() }),
    seed: z.int(),
    target: z.strictObject({
      rule: z.enum(['fixed-fill', 'follows-assay', 'fixed-total']),
      fill_mg: z.number(),
      diluent_mg: z.number().optional(),
      substances: z.array(
        z.strictObject({
          name: z.string(),
          claim_mg: z.number(),
          mass_mg: z.number().optional(),
          content_pct: z.number().optional(),
          claimShare_pct: z.number(),
        }),
      ),
    }),
    candidates: z.array(rankedSchema),
    behind: z.array(candidateSchema),
    rejections: z.array(
      z.strictObject({
        size: z.string(),
        method: z.string().optional(),
        parts: z.record(z.string(), z.string()).optional(),
        reason: findingSchema,
      }),
    ),
  })
  .meta({ description: 'Ranked set-ups for a brief, with sheet, limit card, forecast and every rejection' });
