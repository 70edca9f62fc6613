import { requireWithin } from '#catalogue';
import { log10 } from '@fillwright/stats/elementary';

/**
 * Walker's law: volume of a compressed plug per volume of its solid.
 *
 * 100 V = intercept - slope log10(P / P0)
 *
 * @param input - slope_pct: loss of relative volume per decade of pressure, > 0; intercept_pct: relative volume at the
 *   reference pressure, >= 100; pressure_MPa and referencePressure_MPa: > 0
 * @returns relative volume, 1 = no pores; below 1 the law has left its range
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source Walker, Trans. Faraday Soc. 19 (1923) 73 (form from memory)
 * @validity inside the pressures it was fitted on; in use for the densification of plugs in nozzles
 * @example walkerRelativeVolume_ratio({ slope_pct: 30, intercept_pct: 210, pressure_MPa: 1, referencePressure_MPa: 0.1 }) // 1.8
 */
export function walkerRelativeVolume_ratio(input: {
  readonly slope_pct: number;
  readonly intercept_pct: number;
  readonly pressure_MPa: number;
  readonly referencePressure_MPa: number;
}): number {
  const { slope_pct, intercept_pct, pressure_MPa, referencePressure_MPa } = input;
  requireWithin({ slope_pct, pressure_MPa, referencePressure_MPa }, { above: 0 });
  requireWithin({ intercept_pct }, { min: 100 });
  return (intercept_pct - slope_pct * log10(pressure_MPa / referencePressure_MPa)) / 100;
}
