import type { NumberField } from '#catalogue';

/** Fields that the laws share. */
export const X = {
  key: 'x_ratio',
  title: 'value x',
  kind: 'number',
  unit: '1',
} as const satisfies NumberField;
export const DEGREES = {
  key: 'degreesOfFreedom_ratio',
  title: 'degrees of freedom, whole or not',
  kind: 'number',
  unit: '1',
  min: 0.01,
  max: 1e9,
} as const satisfies NumberField;
export const DEGREES_FROM_ONE = { ...DEGREES, min: 1 } as const satisfies NumberField;
export const COUNT = {
  key: 'count',
  title: 'count k',
  kind: 'integer',
  unit: '1',
  min: 0,
  max: 1e9,
} as const satisfies NumberField;
