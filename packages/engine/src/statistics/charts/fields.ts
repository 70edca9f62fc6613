import type { NumberField, Source } from '#catalogue';

/** Longest series of one chart. */
const MOST_POINTS = 10_000;

/** Fields that the chart entries share. */
export const SERIES = {
  key: 'values_data',
  title: 'values in time order',
  kind: 'number',
  unit: 'data',
  list: { min: 1, max: MOST_POINTS },
} as const satisfies NumberField & { list: object };
export const TARGET = {
  key: 'target_data',
  title: 'target',
  kind: 'number',
  unit: 'data',
} as const satisfies NumberField;
export const SIGMA = {
  key: 'sigma_data',
  title: 'standard deviation sigma of one plotted value',
  kind: 'number',
  unit: 'data',
  above: 0,
} as const satisfies NumberField;
export const LAMBDA = {
  key: 'lambda_frac',
  title: 'weight lambda of the newest value',
  kind: 'number',
  unit: '1',
  min: 0.01,
  max: 1,
} as const satisfies NumberField;
export const LIMIT_FACTOR = {
  key: 'limitFactor_ratio',
  title: 'width L of the limits in standard deviations of what is plotted',
  kind: 'number',
  unit: '1',
  min: 0.05,
  max: 6,
} as const satisfies NumberField;
export const SHIFT = {
  key: 'shift_ratio',
  title: 'shift delta of the mean in standard deviations of the plotted value',
  kind: 'number',
  unit: '1',
  min: -10,
  max: 10,
} as const satisfies NumberField;
export const REFERENCE = {
  key: 'reference_ratio',
  title: 'reference value k in standard deviations, half the shift to be found',
  kind: 'number',
  unit: '1',
  min: 0,
  max: 5,
} as const satisfies NumberField;
export const DECISION_INTERVAL = {
  key: 'decisionInterval_ratio',
  title: 'decision interval h in standard deviations',
  kind: 'number',
  unit: '1',
  min: 0.1,
  max: 24,
} as const satisfies NumberField;
export const HEAD_START = {
  key: 'headStart_frac',
  title: 'head start, share of the decision interval',
  kind: 'number',
  unit: '1',
  min: 0,
  below: 1,
  optional: true,
} as const satisfies NumberField;
export const SIGMA_RATIO = {
  key: 'sigma_ratio',
  title: 'true standard deviation divided by the one for which the limits were made',
  kind: 'number',
  unit: '1',
  min: 0.2,
  max: 5,
} as const satisfies NumberField;
export const SUBGROUP_SIZE = {
  key: 'subgroupSize',
  title: 'values per subgroup n',
  kind: 'integer',
  unit: '1',
  min: 2,
  max: 1000,
} as const satisfies NumberField;
export const IN_CONTROL_RUN_LENGTH = {
  key: 'inControlRunLength',
  title: 'mean number of points up to a false alarm',
  kind: 'number',
  unit: '1',
  min: 10,
  max: 1e6,
} as const satisfies NumberField;
export const RUN_LENGTH = {
  key: 'meanRunLength',
  title: 'mean number of points up to the signal',
  kind: 'number',
  unit: '1',
} as const satisfies NumberField;

/**
 * A number in the unit of the data.
 *
 * @param key - key of the field
 * @param title - its title
 * @returns the field
 * @throws nothing
 * @source none: bookkeeping
 */
export function data<const K extends string>(
  key: K,
  title: string,
): { key: K; title: string; kind: 'number'; unit: 'data' } {
  return { key, title, kind: 'number', unit: 'data' };
}

/**
 * A list of numbers in the unit of the data, one per point.
 *
 * @param key - key of the field
 * @param title - its title
 * @returns the field
 * @throws nothing
 * @source none: bookkeeping
 */
export function dataList<const K extends string>(
  key: K,
  title: string,
): { key: K; title: string; kind: 'number'; unit: 'data'; list: { min: 1; max: 10_000 } } {
  return { ...data(key, title), list: { min: 1, max: MOST_POINTS } };
}

/**
 * A pure number.
 *
 * @param key - key of the field
 * @param title - its title
 * @returns the field
 * @throws nothing
 * @source none: bookkeeping
 */
export function pure<const K extends string>(
  key: K,
  title: string,
): { key: K; title: string; kind: 'number'; unit: '1' } {
  return { key, title, kind: 'number', unit: '1' };
}

export const SHEWHART_SOURCE = {
  text: 'ISO 7870-2, Shewhart control charts',
  read: 'secondary',
} as const satisfies Source;
export const INTEGRAL_EQUATION = {
  text: 'S. V. Crowder, Technometrics 29 (1987) 401-407: integral equation of the mean run length',
  read: 'from memory',
} as const satisfies Source;
/** What every run length assumes. */
export const NORMAL_POINTS = 'Independent normal values, centre and sigma known, shift present from the first point.';
