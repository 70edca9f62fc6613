import type { Field, NumberField } from '#catalogue';

/** Fields that the entries on designs share. */
export const FACTOR_COUNT = {
  key: 'factorCount',
  title: 'factors k',
  kind: 'integer',
  unit: '1',
  min: 1,
  max: 12,
} as const satisfies NumberField;
export const CENTRE_COUNT = {
  key: 'centreCount',
  title: 'centre points',
  kind: 'integer',
  unit: '1',
  min: 0,
  max: 100,
} as const satisfies NumberField;
export const RUN_COUNT = {
  key: 'runCount',
  title: 'runs n',
  kind: 'integer',
  unit: '1',
  min: 1,
} as const satisfies NumberField;
export const GENERATORS = {
  key: 'generators',
  title: 'generators of the added factors, such as D=ABC or E=-AB',
  kind: 'text',
  list: { min: 0, max: 13 },
} as const satisfies Field;
export const SEED = {
  key: 'seed',
  title: 'seed of the random order or starts',
  kind: 'integer',
  unit: '1',
  min: 0,
  max: 4294967295,
} as const satisfies NumberField;
export const ORDER = {
  key: 'order',
  title: 'order of the rows given: standard, or sorted by level to compare designs',
  kind: 'choice',
  choices: ['standard', 'sorted'],
  optional: true,
} as const satisfies Field;
export const MODEL = {
  key: 'model',
  title: 'polynomial: constant and main effects, with products of two, with squares as well',
  kind: 'choice',
  choices: ['main-effects', 'interactions', 'quadratic'],
} as const satisfies Field;
export const LEVELS = {
  key: 'levels_ratio',
  title: 'coded levels of the factors, -1 low, 1 high',
  kind: 'number',
  unit: '1',
  min: -1000,
  max: 1000,
  list: { min: 1, max: 12 },
} as const satisfies NumberField;
export const RUNS = {
  key: 'runs',
  title: 'runs of the design',
  kind: 'group',
  fields: [LEVELS],
  list: { min: 1, max: 5000 },
} as const satisfies Field;
export const LOG_DETERMINANT = {
  key: 'logDeterminant_ratio',
  title: "ln det(X'X)",
  kind: 'number',
  unit: '1',
} as const satisfies NumberField;
export const D_EFFICIENCY = {
  key: 'dEfficiency_ratio',
  title: 'D-efficiency per run',
  kind: 'number',
  unit: '1',
} as const satisfies NumberField;
export const RESPONSES = {
  key: 'responses_data',
  title: 'responses, one per run',
  kind: 'number',
  unit: 'data',
  list: { min: 2, max: 5000 },
} as const satisfies NumberField;

/** Montgomery's textbook, from memory. */
export const TEXTBOOK = {
  text: 'D. C. Montgomery, Design and Analysis of Experiments (Wiley): standard order, generators, defining relation, blocks',
  read: 'from memory',
} as const;
