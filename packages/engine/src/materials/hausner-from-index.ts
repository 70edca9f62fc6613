import { requireWithin } from '#catalogue';

/**
 * Hausner ratio that belongs to a compressibility index.
 *
 * H = 1 / (1 - CI/100)
 *
 * @param compressibilityIndex_pct - from 0 to below 100
 * @returns ratio, >= 1
 * @throws DomainError "not-a-number", "out-of-range"
 * @source follows from the definitions in USP <1174> Powder Flow (USP 29-NF 24 text, seen)
 * @validity exact; the printed Hausner bands follow it to 0.008 only, so grade by one of the two scales
 * @example hausnerFromIndex_ratio(20) // 1.25
 */
export function hausnerFromIndex_ratio(compressibilityIndex_pct: number): number {
  requireWithin({ compressibilityIndex_pct }, { min: 0, below: 100 });
  return 1 / (1 - compressibilityIndex_pct / 100);
}
