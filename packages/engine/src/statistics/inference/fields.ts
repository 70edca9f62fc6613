import type { NumberField } from '#catalogue';

const SHARE = { kind: 'number', unit: '1' } as const;
const DATA = { kind: 'number', unit: 'data' } as const;

/** Fields that the entries of this area share. */
export const VALUES = {
  key: 'values_data',
  title: 'values x',
  ...DATA,
  list: { min: 2, max: 100_000 },
} as const satisfies NumberField;
export const FIRST = { ...VALUES, key: 'first_data', title: 'values of the first sample x' } as const;
export const SECOND = { ...VALUES, key: 'second_data', title: 'values of the second sample y' } as const;
export const CONFIDENCE = {
  key: 'confidence_frac',
  title: 'confidence, two-sided; 0.95 unless given',
  ...SHARE,
  above: 0,
  below: 1,
  optional: true,
} as const satisfies NumberField;
export const MEAN = { key: 'mean_data', title: 'mean', ...DATA } as const satisfies NumberField;
export const SD = { key: 'sd_data', title: 'standard deviation s', ...DATA } as const satisfies NumberField;
export const DIFFERENCE = { key: 'difference_data', title: 'difference of the means', ...DATA } as const;
export const STATISTIC = { key: 'statistic_ratio', title: 'test statistic', ...SHARE } as const satisfies NumberField;
export const DEGREES = {
  key: 'degreesOfFreedom_ratio',
  title: 'degrees of freedom ν',
  ...SHARE,
} as const satisfies NumberField;
export const P_VALUE = { key: 'p_frac', title: 'p value', ...SHARE } as const satisfies NumberField;
export const LOW = { key: 'low_data', title: 'lower limit', ...DATA } as const satisfies NumberField;
export const HIGH = { key: 'high_data', title: 'upper limit', ...DATA } as const satisfies NumberField;

/** What every test here says of a p value. */
export const P_WARNING = 'A large p value shows nothing: too few values cannot find a difference.';
