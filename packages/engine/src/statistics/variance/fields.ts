import type { NumberField } from '#catalogue';

const PURE = { kind: 'number', unit: '1' } as const;

/** Fields that the entries of this area share. */
export const VALUES = {
  key: 'values_data',
  title: 'values y',
  kind: 'number',
  unit: 'data',
  list: { min: 1, max: 100_000 },
} as const satisfies NumberField;
export const MEAN = {
  key: 'mean_data',
  title: 'mean by REML',
  kind: 'number',
  unit: 'data',
} as const satisfies NumberField;
export const MEAN_SE = {
  key: 'meanSe_data',
  title: 'standard error of the mean by REML',
  kind: 'number',
  unit: 'data',
} as const satisfies NumberField;
export const CRITERION = {
  key: 'criterion_ratio',
  title: 'REML criterion -2 ln L, with (n-1) ln 2π',
  ...PURE,
} as const satisfies NumberField;

/**
 * Degrees of freedom, sums of squares, mean squares of sources of variation.
 *
 * @param count - how many
 * @param order - their names
 * @returns the fields
 * @throws nothing
 * @source none: bookkeeping
 */
export const table = <const N extends number>(count: N, order: string) =>
  [
    {
      key: 'degreesOfFreedom',
      title: `degrees of freedom: ${order}`,
      kind: 'integer',
      unit: '1',
      list: { min: count, max: count },
    },
    { ...SQUARES, key: 'sumsOfSquares_data2', title: `sums of squares: ${order}`, list: { min: count, max: count } },
    { ...SQUARES, key: 'meanSquares_data2', title: `mean squares: ${order}`, list: { min: count, max: count } },
  ] as const;

const SQUARES = { kind: 'number', unit: 'data2' } as const;

/**
 * Number of a group, row or column, as the input names it.
 *
 * @param key - its key
 * @param title - its title
 * @returns the field
 * @throws nothing
 * @source none: bookkeeping
 */
export const place = <const K extends string>(key: K, title: string) =>
  ({ key, title, kind: 'integer', unit: '1', min: 1, max: 1e6 }) as const;

export const CONFIDENCE = {
  key: 'confidence_frac',
  title: 'confidence; 0.95 unless given',
  ...PURE,
  above: 0,
  below: 1,
  optional: true,
} as const satisfies NumberField;
export const GRAYBILL_WANG = {
  text: 'F. A. Graybill, C.-M. Wang (1980), JASA 75, 869-873',
  read: 'from memory',
} as const;
export const TING = {
  text: 'N. Ting et al. (1990), J. Stat. Comput. Simul. 35, 135-143; R. K. Burdick, F. A. Graybill, Confidence Intervals on Variance Components (1992), 3',
  read: 'from memory',
} as const;
export const SEARLE = {
  text: 'S. R. Searle, G. Casella, C. E. McCulloch, Variance Components (Wiley, 1992)',
  read: 'from memory',
} as const;
export const REML = {
  text: 'H. D. Patterson, R. Thompson (1971), Biometrika 58, 545-554',
  read: 'from memory',
} as const;
