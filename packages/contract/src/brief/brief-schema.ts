import type { Brief } from '@fillwright/engine/design';
import type { MeasuredKind } from '@fillwright/engine/quantity';
import { SHELL_SIZE_NAMES } from '@fillwright/engine/shells';
import { z } from 'zod';
import {
  choiceSchema,
  formatSchema,
  listSchema,
  mappingSchema,
  numberOrGuessSchema,
  numberSchema,
  populationSchema,
  quantityOrGuessSchema,
  rangeSchema,
  textSchema,
  type QuantityLimits,
} from '#written';
import { FILLER_PATH, SHELL_PATH } from './path-patterns.ts';
import { powderFactsSchema } from './powder-facts-schema.ts';
import { targetSchema } from './target-schema.ts';

const SPREAD: MeasuredKind = 'spread';
const spread = (what: string): QuantityLimits => ({ kind: SPREAD, unit: '%', min: 0, max: 30, what });
const fileSchema = (pattern: string, texts: { readonly what: string; readonly error: string }): z.ZodString =>
  textSchema(`${texts.what}: ${texts.error}`).regex(new RegExp(`^(?:${pattern})$`), { error: texts.error });
const beside = (ending: string): string => `a relative path with forward slashes that ends in ${ending}`;

const powderPart = mappingSchema(
  {
    name: textSchema('name of the part, such as "blend B-117"'),
    dose: choiceSchema(['powder'], 'kind of dose'),
    target: targetSchema.meta({ description: 'how the target of this part is set: one of three rules' }),
    material: powderFactsSchema,
    blendRsd_pct: quantityOrGuessSchema(
      spread('relative standard deviation of the concentration between units of fill'),
    ).exactOptional(),
    assayError_pct: numberOrGuessSchema({
      ...{ unit: '%', min: 0, max: 20 },
      what: 'what the assay may be off for the whole lot, as one sd',
    }).exactOptional(),
  },
  'one dose of powder',
);

const shell = mappingSchema(
  {
    size: z
      .union([choiceSchema(SHELL_SIZE_NAMES, 'size of the table'), textSchema('own name, with `record`')], {
        error: `a size in quotation marks: ${SHELL_SIZE_NAMES.join(', ')}`,
      })
      .meta({ description: "size in quotation marks, such as '0' or '00'; another name needs `record`" }),
    record: fileSchema(SHELL_PATH, {
      what: 'file with your own figures of this shell',
      error: beside('.shell.yaml'),
    }).exactOptional(),
    lot: textSchema('lot of the shells that were weighed').exactOptional(),
    mass_mg: populationSchema({
      ...{ unit: 'mg', min: 10, max: 500 },
      what: 'mass of empty shells of the lot, weighed one by one: {mean, sd, n} in mg',
    }).exactOptional(),
  },
  'a shell that the dossier allows',
);

const inProcess = mappingSchema(
  {
    sampleCount: numberOrGuessSchema(
      { unit: '1', min: 1, max: 1000, what: 'capsules per sample; the guess is 20' },
      'whole',
    ).exactOptional(),
    meanAction_pct: numberSchema({
      ...{ unit: '%', above: 0, max: 50 },
      what: 'action limit of the mean of a sample, +- % of the target',
    }),
    individualAction_pct: numberSchema({
      ...{ unit: '%', above: 0, max: 100 },
      what: 'action limit of one capsule, +- % of the target',
    }),
    individualAlert_pct: numberSchema({
      ...{ unit: '%', above: 0, max: 100 },
      what: 'alert limit of one capsule, +- % of the target; left out: two thirds of the action limit',
    }).exactOptional(),
  },
  "the dossier's in-process limits of the total net mass",
);

const routeTest = mappingSchema(
  {
    test: choiceSchema(
      ['dosage-units-by-mass', 'dosage-units-by-content', 'uniformity-of-mass', 'uniformity-of-content'],
      'test of the pharmacopoeia',
    ),
    use: choiceSchema(['release', 'in-process'], 'where the dossier uses it'),
  },
  'a test that the dossier names',
);

const machineRecord = mappingSchema(
  {
    unit_pct: quantityOrGuessSchema(spread('spread between capsules, % of the mass')).exactOptional(),
    betweenTimes_pct: quantityOrGuessSchema(spread('spread between sampling times, % of the mass')).exactOptional(),
    setUpSampleCount: numberSchema(
      { unit: '1', min: 1, max: 1000, what: 'samples that the set-up is judged on; left out: 1' },
      'whole',
    ).exactOptional(),
  },
  "what this machine's own record says of its spread",
);

/** A brief as people write it; its output is the engine's brief. */
export const briefSchema = mappingSchema(
  {
    format: formatSchema,
    product: mappingSchema(
      { code: textSchema('code of the product'), name: textSchema('name of the product') },
      'which product it is',
    ),
    cautions: listSchema(textSchema('one caution'), {
      ...{ minCount: 1, maxCount: 50 },
      what: 'what people must be told before they handle this product',
    }).exactOptional(),
    parts: z
      .tuple([powderPart], { error: 'a list of one part' })
      .meta({ description: 'what goes into the capsule; one part for now' }),
    shells: listSchema(shell, { minCount: 1, maxCount: 20, what: 'shells that may be used, one line a size' }),
    filler: fileSchema(`generic|${FILLER_PATH}`, {
      what: 'the filler; generic is an invented demo filler',
      error: `generic, or ${beside('.filler.yaml')}`,
    }),
    validated: mappingSchema(
      {
        pinDepth: rangeSchema('depths of a pin below the face of the disc, mm').exactOptional(),
        discHeight: rangeSchema('heights of a measuring disc, mm').exactOptional(),
      },
      "ranges validated for this product on this filler; they narrow the filler's own",
    ).exactOptional(),
    inProcess,
    route: listSchema(routeTest, { minCount: 1, maxCount: 8, what: 'tests that the dossier names' }),
    record: machineRecord.exactOptional(),
  },
  'what must be in each capsule, of what, in which shells, on which filler, by which tests',
) satisfies z.ZodType<Brief>;
