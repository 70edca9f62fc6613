import { AQLS, LETTERS, LEVELS } from '@fillwright/stats/sampling';
import type { NumberField } from '#catalogue';

/** Fields and sources that the entries on sampling share. */
export const LOT_SIZE = {
  key: 'lotSize',
  title: 'units in the lot N',
  kind: 'integer',
  unit: '1',
  min: 2,
  max: 1e9,
} as const satisfies NumberField;
export const LEVEL = {
  key: 'level',
  title: 'inspection level',
  kind: 'choice',
  choices: LEVELS,
} as const;
export const AQL = {
  key: 'aql',
  title: 'acceptance quality limit as printed, per cent nonconforming or nonconformities per 100',
  kind: 'choice',
  choices: AQLS,
} as const;
export const INSPECTION = {
  key: 'inspection',
  title: 'kind of inspection',
  kind: 'choice',
  choices: ['normal', 'tightened', 'reduced'],
} as const;
export const SCHEME = {
  key: 'scheme',
  title: 'text that the plans are from',
  kind: 'choice',
  choices: ['ISO 2859-1', 'MIL-STD-105E'],
  optional: true,
} as const;
export const LETTER = {
  key: 'codeLetter',
  title: 'code letter by lot and level',
  kind: 'choice',
  choices: LETTERS,
} as const;
export const PLAN_LETTER = {
  ...LETTER,
  key: 'planLetter',
  title: 'letter of the row where the plan stands',
} as const;
export const COUNT = { kind: 'integer', unit: '1', min: 0, max: 1e6 } as const;
export const SAMPLE_SIZE = {
  key: 'sampleSize',
  title: 'sample n',
  kind: 'integer',
  unit: '1',
  min: 1,
  max: 1e6,
} as const satisfies NumberField;
export const ACCEPTANCE_NUMBER = {
  ...COUNT,
  key: 'acceptanceNumber',
  title: 'accepted up to this count, Ac',
} as const satisfies NumberField;
export const REJECTION_NUMBER = {
  ...COUNT,
  key: 'rejectionNumber',
  title: 'not accepted from this count, Re',
} as const satisfies NumberField;
export const CHANCE = { kind: 'number', unit: '1', above: 0, below: 1 } as const;
export const LAW = {
  key: 'law',
  title: 'binomial: nonconforming units; poisson: nonconformities',
  kind: 'choice',
  choices: ['binomial', 'poisson'],
} as const;
export const QUALITIES = {
  key: 'qualities_ratio',
  title: 'qualities p, nonconforming units or nonconformities per unit',
  kind: 'number',
  unit: '1',
  min: 0,
  max: 10,
  list: { min: 1, max: 1000 },
} as const satisfies NumberField;
export const ACCEPTED = {
  key: 'accepted_frac',
  title: 'probabilities to accept',
  kind: 'number',
  unit: '1',
  list: { min: 1, max: 1000 },
} as const satisfies NumberField;
export const TWO_POINTS = [
  { ...CHANCE, key: 'producerQuality_frac', title: 'quality that should be accepted p_1' },
  { ...CHANCE, key: 'producerRisk_frac', title: 'probability not to accept it' },
  { ...CHANCE, key: 'consumerQuality_frac', title: 'quality that should not be accepted p_2' },
  { ...CHANCE, key: 'consumerRisk_frac', title: 'probability to accept it' },
] as const;

export const ISO_2859 = {
  text: 'ISO 2859-1:1999 Tables 1, 2-A, 2-B, 2-C and clause 9.3: cells checked against a transcription of the tables, clause through public quotations; the book itself was not seen',
  read: 'secondary',
} as const;
export const MIL_105 = {
  text: 'MIL-STD-105E (1989) Tables I, II-A..C, III-A..C: cells checked against a transcription',
  read: 'secondary',
} as const;
export const MIL_414 = {
  text: 'MIL-STD-414 (1957) Table B-1, k for one limit, variability unknown: a transcription, 106 of 110 values checked lie within 0.011 of the M tables',
  read: 'secondary',
} as const;
export const LAWS = { text: 'definitions of the binomial, Poisson and hypergeometric laws', read: 'geometry' } as const;
export const JOHNSON_WELCH = {
  text: 'N. L. Johnson, B. L. Welch, Applications of the non-central t-distribution, Biometrika 31 (1940) 362-389',
  read: 'from memory',
} as const;
export const SERIES =
  'Lots of a process of constant quality, units drawn at random. An accepted lot is not proof of the AQL.';
