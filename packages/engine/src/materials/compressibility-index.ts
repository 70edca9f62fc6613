import { DomainError, requireWithin } from '#catalogue';

/** Poured and tapped density of one powder, measured in one cylinder. */
export interface BulkAndTapped {
  readonly bulkDensity_g_per_mL: number;
  readonly tappedDensity_g_per_mL: number;
}

/**
 * Compressibility index: the share of its bulk volume that a powder bed loses on tapping.
 *
 * CI = 100 (rho_t - rho_b) / rho_t
 *
 * @param input - bulkDensity_g_per_mL: poured, > 0; tappedDensity_g_per_mL: after tapping, >= bulk
 * @returns index in % of the bulk volume, from 0 to below 100
 * @throws DomainError "not-a-number", "not-positive", "tapped-below-bulk"
 * @source USP <1174> Powder Flow (USP 29-NF 24 text, seen)
 * @validity depends on cylinder and tap count; compare only results taken the same way
 * @example compressibilityIndex_pct({ bulkDensity_g_per_mL: 0.3, tappedDensity_g_per_mL: 0.4 }) // 25
 */
export function compressibilityIndex_pct({ bulkDensity_g_per_mL, tappedDensity_g_per_mL }: BulkAndTapped): number {
  requireWithin({ bulkDensity_g_per_mL, tappedDensity_g_per_mL }, { above: 0 });
  if (tappedDensity_g_per_mL < bulkDensity_g_per_mL)
    throw new DomainError('tapped-below-bulk', { bulkDensity_g_per_mL, tappedDensity_g_per_mL });
  return (100 * (tappedDensity_g_per_mL - bulkDensity_g_per_mL)) / tappedDensity_g_per_mL;
}
