import type { NetAndShell, OpenLimits } from '@fillwright/stats/conformity';
import type { NumberField } from '#catalogue';

const SHARE = { kind: 'number', unit: '1' } as const;
const DATA = { kind: 'number', unit: 'data' } as const;

/** Fields that the entries of this area share. */
export const NET_AND_SHELL = [
  { key: 'meanNet_data', title: 'mean net μ_N', ...DATA },
  { key: 'sdNet_data', title: 'standard deviation of the net σ_N', ...DATA, above: 0 },
  { key: 'meanShell_data', title: 'mean shell μ_S', ...DATA },
  { key: 'sdShell_data', title: 'standard deviation of the shells σ_S', ...DATA, min: 0 },
  {
    key: 'sdWeighing_data',
    title: 'standard deviation of one weighing σ_e; 0 unless given',
    ...DATA,
    min: 0,
    optional: true,
  },
  {
    key: 'correlation_ratio',
    title: 'correlation of net and shell; 0 unless given',
    ...SHARE,
    min: -1,
    max: 1,
    optional: true,
  },
] as const satisfies readonly NumberField[];
export const NET_LIMITS = [
  { key: 'netLow_data', title: 'lower net limit', ...DATA, optional: true },
  { key: 'netHigh_data', title: 'upper net limit', ...DATA, optional: true },
] as const satisfies readonly NumberField[];
export const TOLERANCE = [
  { key: 'toleranceLow_data', title: 'lower tolerance limit T_L', ...DATA, optional: true },
  { key: 'toleranceHigh_data', title: 'upper tolerance limit T_U', ...DATA, optional: true },
] as const satisfies readonly NumberField[];
export const FALSE_REJECT = {
  key: 'falseReject_frac',
  title: 'good and rejected, of all',
  ...SHARE,
} as const satisfies NumberField;
export const ACCEPTED = {
  key: 'grossAccepted_frac',
  title: 'accepted by the gross: the yield',
  ...SHARE,
} as const satisfies NumberField;

/** A number in the unit of the data. */
type InUnitOfData = number;

interface Ends {
  readonly low: InUnitOfData | undefined;
  readonly high: InUnitOfData | undefined;
}

interface Raw {
  readonly meanNet_data: number;
  readonly sdNet_data: number;
  readonly meanShell_data: number;
  readonly sdShell_data: number;
  readonly sdWeighing_data?: number;
  readonly correlation_ratio?: number;
}

/**
 * Net and shell as the functions of stats take them.
 *
 * @param raw - fields of `NET_AND_SHELL`
 * @returns the same by its names in stats
 * @throws nothing
 * @source none: bookkeeping
 */
export function netAndShell(raw: Raw): NetAndShell {
  return {
    ...{ meanNet: raw.meanNet_data, sdNet: raw.sdNet_data, meanShell: raw.meanShell_data, sdShell: raw.sdShell_data },
    ...{ sdWeighing: raw.sdWeighing_data ?? 0, correlation: raw.correlation_ratio ?? 0 },
  };
}

/**
 * Limits of which one may be missing.
 *
 * @param ends - lower and upper
 * @returns only the sides that are given
 * @throws nothing
 * @source none: bookkeeping
 */
export function openLimits(ends: Ends): OpenLimits {
  const { low, high } = ends;
  return { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) };
}
