import { requireWithin } from '#catalogue';
import { kawakitaTapping_frac, type Tapping } from './kawakita-tapping.ts';

/**
 * Density of a powder after n taps, by Kawakita's law.
 *
 * rho_n = rho_0 / (1 - C)
 *
 * @param input - initialDensity_g_per_mL: poured, > 0; the rest as `kawakitaTapping_frac`
 * @returns g/mL, from the poured density to below rho_0 / (1 - a)
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source Kawakita & Luedde, Powder Technology 4 (1971) 61 (from memory)
 * @validity as `kawakitaTapping_frac`; the density must be the one the curve was fitted from
 * @example densityAfterTaps_g_per_mL({ initialDensity_g_per_mL: 0.5, a_frac: 0.5, b_per_tap: 0.25, tapCount: 12 }) // 0.8
 */
export function densityAfterTaps_g_per_mL(input: Tapping & { readonly initialDensity_g_per_mL: number }): number {
  const { initialDensity_g_per_mL, ...tapping } = input;
  requireWithin({ initialDensity_g_per_mL }, { above: 0 });
  return initialDensity_g_per_mL / (1 - kawakitaTapping_frac(tapping));
}
