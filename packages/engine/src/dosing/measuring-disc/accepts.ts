import { compressibilityIndex_pct } from '#materials';
import type { DosingContext, Suitability } from '../dosing.ts';
import type { Finding } from '../finding.ts';

/** Limits of suitability for a disc. @source common practice, no source */
export const DISC_SUITABILITY = { freest_pct: 15, stickiest_pct: 31, unusableAbove_pct: 37, slugForce_N: 75 } as const;

/** A limit is not broken by the last binary digit: 0.69 and 1.00 g/mL give 31.000000000000004 %. */
const ROUNDING = 1e-9;

/**
 * Whether a powder suits the measuring disc, with the numbers that say so.
 *
 * @param context - the material: poured and tapped density, and whether a slug held together on the bench
 * @returns suitable: compressibility index 15 to 31 % and a slug at 75 N or less; possible: below 15, 31 to 37, or no
 *   bench slug known; unsuitable: above 37, or no slug at 75 N
 * @throws DomainError "tapped-below-bulk", "not-positive", "not-a-number"
 * @source common practice, no source
 * @validity a first sieve; a trial decides
 */
export function accepts({ material }: DosingContext): Suitability {
  const index_pct = compressibilityIndex_pct({
    bulkDensity_g_per_mL: material.bulkDensity_g_per_mL.mean,
    tappedDensity_g_per_mL: material.tappedDensity_g_per_mL.mean,
  });
  const { freest_pct, stickiest_pct, unusableAbove_pct, slugForce_N } = DISC_SUITABILITY;
  const reason = (code: Finding['code'], numbers: Finding['numbers']): Finding => ({
    code,
    numbers,
    rule: 'disc-suitability',
  });
  const unsuitable = [
    ...(index_pct > unusableAbove_pct + ROUNDING
      ? [reason('flow-too-poor', { index_pct, limit_pct: unusableAbove_pct })]
      : []),
    ...(material.slug &&
    (!material.slug.isHeld ? material.slug.force_N >= slugForce_N : material.slug.force_N > slugForce_N)
      ? [reason('no-slug', { force_N: material.slug.force_N, limit_N: slugForce_N })]
      : []),
  ];
  if (unsuitable.length > 0) return { grade: 'unsuitable', reasons: unsuitable };
  const possible = [
    ...(index_pct < freest_pct - ROUNDING ? [reason('flow-too-free', { index_pct, limit_pct: freest_pct })] : []),
    ...(index_pct > stickiest_pct + ROUNDING ? [reason('flow-poor', { index_pct, limit_pct: stickiest_pct })] : []),
    ...(material.slug?.isHeld ? [] : [reason('slug-unknown', { limit_N: slugForce_N })]),
  ];
  if (possible.length > 0) return { grade: 'possible', reasons: possible };
  return {
    grade: 'suitable',
    reasons: [reason('flow-suits', { index_pct, low_pct: freest_pct, high_pct: stickiest_pct })],
  };
}
