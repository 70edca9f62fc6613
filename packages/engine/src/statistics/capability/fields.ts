export const PURE = { kind: 'number', unit: '1' } as const;
export const DATA = { kind: 'number', unit: 'data' } as const;
/** Fields that the entries of this area share. */
export const LIMITS = [
  { key: 'lower_data', title: 'lower limit L', ...DATA, optional: true },
  { key: 'upper_data', title: 'upper limit U', ...DATA, optional: true },
] as const;
export const CONFIDENCE = {
  key: 'confidence_frac',
  title: 'confidence; 0.95 unless given',
  ...PURE,
  above: 0,
  below: 1,
  optional: true,
} as const;
export const OUTSIDE = {
  key: 'outside_ppm',
  title: 'expected outside the limits',
  kind: 'number',
  unit: 'ppm',
} as const;
export const ISO = { text: 'ISO 22514-2, ISO 22514-4', read: 'secondary' } as const;

/**
 * Limits of which one may be missing.
 *
 * @param raw - fields of `LIMITS`
 * @returns only the sides that are given
 * @throws nothing
 * @source none: bookkeeping
 */
export function limitsOf(raw: { readonly lower_data?: number; readonly upper_data?: number }): Limits {
  return {
    ...(raw.lower_data === undefined ? {} : { lower: raw.lower_data }),
    ...(raw.upper_data === undefined ? {} : { upper: raw.upper_data }),
  };
}

/** A limit in the unit of the data. */
type InUnitOfData = number;

interface Limits {
  readonly lower?: InUnitOfData;
  readonly upper?: InUnitOfData;
}
