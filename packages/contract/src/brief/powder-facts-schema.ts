import { GUESSED_KAWAKITA_A, type CompressionKnowledge, type PowderFacts } from '@fillwright/engine/materials';
import type { MeasuredKind } from '@fillwright/engine/quantity';
import { z } from 'zod';
import {
  choiceOf,
  choiceSchema,
  flagSchema,
  mappingSchema,
  numberSchema,
  quantityOrGuessSchema,
  quantitySchema,
  textSchema,
  type QuantityLimits,
} from '#written';

const RATIO: MeasuredKind = 'ratio';
const packed = (what: string): QuantityLimits => ({ kind: 'density', unit: 'g/mL', min: 0.03, max: 3, what });
const trueDensity = { unit: 'g/mL', min: 0.3, max: 5, what: 'true density of the solid' };
const ratio = (limits: Omit<QuantityLimits, 'kind'>): QuantityLimits => ({ kind: RATIO, ...limits });
const FORCE = { unit: 'N', above: 0, max: 3000 };
const PRESSURE = { unit: 'MPa', above: 0, max: 500 };
const A: QuantityLimits = {
  ...{ kind: 'law-constant', unit: '1', min: 0.02, max: 0.98 },
  what: "Kawakita's a: greatest volume reduction",
};
/** Left out or `guess`: the engine's guess of a, since a pair alone leaves it open. */
const aOrGuess = quantityOrGuessSchema(A)
  .optional()
  .transform((a) => a ?? GUESSED_KAWAKITA_A);
const pairDensity = quantitySchema(packed('mean density of the slug under the force or pressure'));

const compression = z.discriminatedUnion(
  'law',
  [
    mappingSchema(
      {
        law: choiceSchema(['kawakita'], 'which law'),
        a_frac: quantitySchema(A),
        b_per_MPa: quantitySchema({
          ...{ kind: 'law-constant', unit: '1/MPa', min: 0.001, max: 1000 },
          what: "Kawakita's b",
        }),
        initialDensity_g_per_mL: numberSchema(
          packed('packing from which the fit started; left out: the feed density'),
        ).exactOptional(),
      },
      'Kawakita: C = a b P / (1 + b P), from slugs pressed in a die of about the bore',
    ),
    mappingSchema(
      {
        law: choiceSchema(['walker'], 'which law'),
        slope_pct: quantitySchema({
          ...{ kind: 'law-constant', unit: '%', above: 0, max: 1000 },
          what: 'fall of the relative volume per tenfold pressure, in % of the solid',
        }),
        intercept_pct: quantitySchema({
          ...{ kind: 'law-constant', unit: '%', min: 100, max: 3000 },
          what: 'relative volume at the reference pressure, in % of the solid',
        }),
        referencePressure_MPa: numberSchema({ ...PRESSURE, what: 'pressure to which the intercept belongs' }),
        trueDensity_g_per_mL: numberSchema(trueDensity),
      },
      'Walker: relative volume falls with the logarithm of the pressure',
    ),
    mappingSchema(
      {
        law: choiceSchema(['one-pair'], 'which law'),
        density_g_per_mL: pairDensity,
        pressure_MPa: numberSchema({ ...PRESSURE, what: 'pressure of the pair' }),
        a_frac: aOrGuess,
      },
      'one pair of pressure and density',
    ),
    mappingSchema(
      {
        law: choiceSchema(['one-pair-by-force'], 'which law'),
        density_g_per_mL: pairDensity,
        force_N: numberSchema({ ...FORCE, what: 'force of the pair, in a die of the bore' }),
        a_frac: aOrGuess,
      },
      'one slug pressed with a known force in a die of the bore',
    ),
  ],
  { error: choiceOf('law', 'kawakita, walker, one-pair, one-pair-by-force') },
) satisfies z.ZodType<CompressionKnowledge>;

/** What a floor knows of a powder: poured and tapped density are asked, everything else has a guess. */
export const powderFactsSchema = mappingSchema(
  {
    lot: textSchema('lot of the blend').exactOptional(),
    bulkDensity_g_per_mL: quantitySchema(packed('poured (bulk) density')),
    tappedDensity_g_per_mL: quantitySchema(packed('tapped density')),
    trueDensity_g_per_mL: quantityOrGuessSchema({ kind: 'density', ...trueDensity }).exactOptional(),
    feedDensity_g_per_mL: quantityOrGuessSchema(packed('density of the bed in the bowl')).exactOptional(),
    compression: z
      .union([compression, z.literal('guess')], { error: 'a mapping with law and its constants, or guess' })
      .meta({ description: 'how the powder answers to a tamping pin, or guess (same as left out)' })
      .transform((value) => (value === 'guess' ? undefined : value))
      .exactOptional(),
    refill_ratio: quantityOrGuessSchema(
      ratio({ unit: '1', min: 0, max: 3, what: 'density of the refill over a pin, relative to the feed density' }),
    ).exactOptional(),
    captured_ratio: quantityOrGuessSchema(
      ratio({
        ...{ unit: '1', min: 0, max: 2 },
        what: 'powder captured by a tamp, as a share of feed density x bore area x bore diameter; left out: none',
      }),
    ).exactOptional(),
    axialSpringback_pct: quantityOrGuessSchema(
      ratio({ unit: '%', min: 0, max: 50, what: 'lengthening of the slug after ejection' }),
    ).exactOptional(),
    radialSpringback_pct: quantityOrGuessSchema(
      ratio({ unit: '%', min: 0, max: 20, what: 'widening of the slug after ejection' }),
    ).exactOptional(),
    wallFriction_ratio: quantityOrGuessSchema(
      ratio({ unit: '1', min: 0.01, max: 2, what: 'friction coefficient of powder on the bore' }),
    ).exactOptional(),
    lateralStress_ratio: quantityOrGuessSchema(
      ratio({ unit: '1', min: 0.01, max: 1, what: 'radial stress over axial stress in the plug' }),
    ).exactOptional(),
    slug: mappingSchema(
      {
        isHeld: flagSchema('whether a slug of the bore held together when handled'),
        force_N: numberSchema({ ...FORCE, what: 'force with which it was pressed' }),
      },
      'bench press: one slug of the diameter of the bore',
    ).exactOptional(),
  },
  'the powder as the floor knows it',
) satisfies z.ZodType<PowderFacts>;
