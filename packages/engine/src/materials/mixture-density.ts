import { DomainError, requireWithin } from '#catalogue';

/** How far the shares may miss 1: three times .333333 does by 1e-6, in doubles by a trace more. */
const TOLERANCE_frac = 1e-6 + 1e-12;

/**
 * Density of a mixture whose parts keep their own volume.
 *
 * rho = 1 / sum(w_i / rho_i)
 *
 * @param input - massShares_frac: n >= 1 shares by mass, each 0 to 1, together 1; densities_g_per_mL: as many, > 0
 * @returns g/mL, between the least and the greatest of the densities
 * @throws DomainError "unlike-lengths", "not-a-number", "not-positive", "out-of-range", "mass-shares-not-one"
 * @source volumes add (mass balance); fill weight of binary mixtures follows volume shares (abstract read, see SOURCES.md)
 * @validity exact for true densities. Poured and tapped densities: a starting value, since fines fill the voids of
 *   coarse parts and lubricant changes the packing; measure the blend
 * @example mixtureDensity_g_per_mL({ massShares_frac: [0.25, 0.75], densities_g_per_mL: [0.5, 1.5] }) // 1
 */
export function mixtureDensity_g_per_mL(input: {
  readonly massShares_frac: readonly number[];
  readonly densities_g_per_mL: readonly number[];
}): number {
  const { massShares_frac, densities_g_per_mL } = input;
  if (massShares_frac.length !== densities_g_per_mL.length || massShares_frac.length === 0)
    throw new DomainError('unlike-lengths', {
      shareCount: massShares_frac.length,
      densityCount: densities_g_per_mL.length,
    });
  let sum_frac = 0;
  let volume_mL_per_g = 0;
  for (const [i, massShare_frac] of massShares_frac.entries()) {
    const density_g_per_mL = densities_g_per_mL[i] ?? NaN;
    requireWithin({ massShare_frac }, { min: 0, max: 1 });
    requireWithin({ density_g_per_mL }, { above: 0 });
    sum_frac += massShare_frac;
    volume_mL_per_g += massShare_frac / density_g_per_mL;
  }
  if (Math.abs(sum_frac - 1) > TOLERANCE_frac)
    throw new DomainError('mass-shares-not-one', { sum_frac, massShares_frac });
  return 1 / volume_mL_per_g;
}
