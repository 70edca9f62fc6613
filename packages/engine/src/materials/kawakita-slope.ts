import { DomainError, requireWithin } from '#catalogue';

/**
 * Kawakita's b from one pair of pressure and density, with a given.
 *
 * b = C / (P (a - C)), C = 1 - rho_i/rho
 *
 * @param input - initialDensity_g_per_mL and density_g_per_mL: before and under the pressure; pressure_MPa: > 0;
 *   a_frac: greatest volume reduction, 0 < a < 1
 * @returns b, 1/MPa, > 0
 * @throws DomainError "not-a-number", "not-positive", "out-of-range" (a outside its range, no densification at all,
 *   or a reduction at or beyond a: facts reduction_frac, a_frac)
 * @source Kawakita & Luedde, Powder Technology 4 (1971) 61 (from memory), solved for b
 * @validity one pair fixes b only for this a; near C = a a small error of the density moves b without bound
 * @example kawakitaSlope_per_MPa({ initialDensity_g_per_mL: 0.6, density_g_per_mL: 0.8, pressure_MPa: 0.5, a_frac: 0.5 }) // 2
 */
export function kawakitaSlope_per_MPa(input: {
  readonly initialDensity_g_per_mL: number;
  readonly density_g_per_mL: number;
  readonly pressure_MPa: number;
  readonly a_frac: number;
}): number {
  const { initialDensity_g_per_mL, density_g_per_mL, pressure_MPa, a_frac } = input;
  requireWithin({ initialDensity_g_per_mL, density_g_per_mL, pressure_MPa }, { above: 0 });
  requireWithin({ a_frac }, { above: 0, below: 1 });
  const reduction_frac = 1 - initialDensity_g_per_mL / density_g_per_mL;
  if (reduction_frac <= 0 || reduction_frac >= a_frac)
    throw new DomainError('out-of-range', { reduction_frac, a_frac, initialDensity_g_per_mL, density_g_per_mL });
  return reduction_frac / (pressure_MPa * (a_frac - reduction_frac));
}
