import type { NumberField } from '#catalogue';

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
