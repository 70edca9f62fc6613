import { compressibilityIndex_pct, type BulkAndTapped } from './compressibility-index.ts';

/**
 * Hausner ratio: tapped over poured density.
 *
 * H = rho_t / rho_b
 *
 * @param densities - as for `compressibilityIndex_pct`
 * @returns ratio, >= 1
 * @throws DomainError "not-a-number", "not-positive", "tapped-below-bulk"
 * @source USP <1174> Powder Flow (USP 29-NF 24 text, seen)
 * @validity says the same as the compressibility index of the same two densities; depends on cylinder and tap count
 * @example hausner_ratio({ bulkDensity_g_per_mL: 0.4, tappedDensity_g_per_mL: 0.5 }) // 1.25
 */
export function hausner_ratio(densities: BulkAndTapped): number {
  compressibilityIndex_pct(densities);
  return densities.tappedDensity_g_per_mL / densities.bulkDensity_g_per_mL;
}
