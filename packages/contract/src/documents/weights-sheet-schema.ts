import { z } from 'zod';
import { choiceSchema, flagSchema, formatSchema, numberSchema, strictMapping } from '#written';
import { LONGEST_TEXT } from './document-schemas.ts';

const RAW = { error: `a text of at most ${LONGEST_TEXT} characters` };
const raw = z.string(RAW).max(LONGEST_TEXT, RAW);
const mass = (what: string): z.ZodNumber => numberSchema({ unit: 'mg', above: 0, what });
const share = (what: string, max: number): z.ZodNumber => numberSchema({ unit: '%', above: 0, max, what });
const places = (what: string): z.ZodNumber => numberSchema({ unit: '1', min: 1, max: 1000, what }, 'whole');
const TESTS = ['dosage-units-by-mass', 'uniformity-of-mass', 'supplement-mass'] as const;

/** What a person types where no product says it. */
const typedFactsSchema = strictMapping(
  {
    target_mg: mass('target of the dossier, net').optional(),
    meanAction_pct: share('limit of the mean, in % of the target', 100).optional(),
    individualAction_pct: share('limit of a single capsule, in % of the target', 100).optional(),
    content_pct: share('content at the mean mass, from the assay, % of the claim', 200).optional(),
    tests: z.array(choiceSchema(TESTS, 'a test on single weights'), { error: 'a list of tests' }).max(TESTS.length),
    groupCount: places('dosing groups of the filler').optional(),
    columnCount: places('columns of a dosing group').optional(),
  },
  'what a person types where no product says it',
);

/** Weights as they were pasted, with what the person said about them. */
export const weightsSheetSchema = strictMapping(
  {
    format: formatSchema,
    /** Both texts exactly as they came. */
    weights: raw,
    shells: raw,
    purpose: choiceSchema(['trial', 'in-process', 'release'], 'what the weights may decide'),
    basis: choiceSchema(['gross', 'net'], 'what the balance showed'),
    unit: choiceSchema(['mg', 'g'], 'unit of weights that bear none').optional(),
    isRevolution: flagSchema('the weights are one full revolution, group after group'),
    typed: typedFactsSchema,
  },
  'weights as they were pasted',
);

export type TypedFacts = z.infer<typeof typedFactsSchema>;
export type WeightsSheet = z.infer<typeof weightsSheetSchema>;
