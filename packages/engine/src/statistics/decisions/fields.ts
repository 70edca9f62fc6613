import type { DossierTest } from '@fillwright/stats/decisions';
import type { Field, NumberField } from '#catalogue';

/** Fields that the dosage-unit entries share. */
export const MEAN = {
  key: 'mean_pct',
  title: 'mean content of the units',
  kind: 'number',
  unit: '%',
  min: 0,
  max: 200,
} as const satisfies NumberField;
export const SD = {
  key: 'sd_pct',
  title: 'standard deviation between units',
  kind: 'number',
  unit: '%',
  min: 0,
  max: 100,
} as const satisfies NumberField;
export const TARGET = {
  key: 'target_pct',
  title: 'target content T',
  kind: 'number',
  unit: '%',
  above: 0,
  max: 120,
  optional: true,
} as const satisfies NumberField;
export const UNITS = {
  key: 'unitCount',
  title: 'units tested, 10 or 30',
  kind: 'integer',
  unit: '1',
  min: 10,
  max: 30,
} as const satisfies NumberField;
export const PASS = {
  key: 'pass_frac',
  title: 'probability of passing',
  kind: 'number',
  unit: '1',
} as const satisfies NumberField;

/** The harmonised text on uniformity of dosage units. */
export const DOSAGE_UNITS_SOURCE = {
  text: 'USP <905>, Ph. Eur. 2.9.40, JP 6.02 (harmonised; ICH Q4B Annex 6): k = 2.4 for 10 units, 2.0 for 30, L1 = 15.0, L2 = 25.0',
  read: 'secondary',
} as const;
export const MASS_SOURCE = { text: 'Ph. Eur. 2.9.5, 01/2008:20905, table 2.9.5.-1', read: 'secondary' } as const;

/** Limits L1 and L2, where a monograph sets its own. */
export const LIMIT_FIELDS = [
  {
    key: 'acceptanceLimit_pct',
    title: 'largest acceptance value L1, 15 unless given',
    kind: 'number',
    unit: '%',
    above: 0,
    max: 100,
    optional: true,
  },
  {
    key: 'unitDeviation_pct',
    title: 'largest deviation of a unit L2, 25 unless given',
    kind: 'number',
    unit: '%',
    above: 0,
    below: 100,
    optional: true,
  },
] as const satisfies readonly NumberField[];

/** Rules of conduct: what the sample was taken for, and what the dossier says. */
export const CONDUCT_FIELDS = [
  {
    key: 'route',
    title: 'tests that the dossier names for this purpose',
    kind: 'choice',
    choices: [
      ...['dosage-units-by-content', 'dosage-units-by-mass', 'uniformity-of-mass', 'uniformity-of-content'],
      'supplement-mass',
    ] as readonly DossierTest[],
    list: { min: 1, max: 5 },
  },
  { key: 'purpose', title: 'purpose of the sample', kind: 'choice', choices: ['release', 'in-process', 'trial'] },
  {
    key: 'loadCount',
    title: 'separate loads in one capsule, 1 unless given',
    kind: 'integer',
    unit: '1',
    min: 1,
    max: 10,
    optional: true,
  },
] as const satisfies readonly Field[];

/** Which acceptance value the dossier compares with the limit. */
export const ROUNDING_FIELD = {
  key: 'rounding',
  title: 'acceptance value compared with L1: unrounded, or half-up to one decimal',
  kind: 'choice',
  choices: ['unrounded', 'halfUp'],
} as const satisfies Field;

/** What every judgement says. */
export const JUDGEMENT_FIELDS = [
  { key: 'verdict', title: 'verdict', kind: 'choice', choices: ['pass', 'fail', 'cannot-tell'] },
  { key: 'reasons', title: 'reasons', kind: 'text', list: { min: 0, max: 10 } },
  {
    key: 'next',
    title: 'what follows',
    kind: 'choice',
    choices: ['none', 'test-further-units', 'weigh-shells', 'investigate'],
  },
  { key: 'lookInto', title: 'text to look into', kind: 'text', optional: true },
] as const satisfies readonly Field[];

interface ValuesField<Key extends string> {
  readonly key: Key;
  readonly title: string;
  readonly kind: 'number';
  readonly unit: string;
  readonly list: { readonly min: 1; readonly max: 100 };
}

/**
 * A list of weighings, or of contents in %.
 *
 * @param field - key, title and unit
 * @returns the field of a list of 1 to 100 numbers
 * @throws nothing
 * @source none: bookkeeping
 */
export function valuesField<const Key extends string>(
  field: Pick<ValuesField<Key>, 'key' | 'title' | 'unit'>,
): ValuesField<Key> {
  return { ...field, kind: 'number', list: { min: 1, max: 100 } };
}
