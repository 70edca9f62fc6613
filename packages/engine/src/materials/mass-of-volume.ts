import { requireWithin } from '#catalogue';

/**
 * Mass of powder in a volume.
 *
 * m = V rho
 *
 * @param input - volume_mL: >= 0; density_g_per_mL: of the powder as it lies there, > 0
 * @returns mg
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source definition of density
 * @validity the density must be the one in this volume: poured, tapped or pressed, not the true one
 * @example massOfVolume_mg({ volume_mL: 0.68, density_g_per_mL: 0.5 }) // 340
 */
export function massOfVolume_mg(input: { readonly volume_mL: number; readonly density_g_per_mL: number }): number {
  const { volume_mL, density_g_per_mL } = input;
  requireWithin({ volume_mL }, { min: 0 });
  requireWithin({ density_g_per_mL }, { above: 0 });
  return 1000 * volume_mL * density_g_per_mL;
}
