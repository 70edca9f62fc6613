import { requireWithin } from '#elementary';

/** Dose of one active substance and net mass of the contents of one hard capsule, mg. */
export interface DoseInContents {
  readonly dose: number;
  readonly contents: number;
}

/** Least dose, mg, and least share of the contents, %, for mass variation; both "or more". */
const MASS_VARIATION = { dose: 25, share_pct: 25 };

/**
 * Which way of the uniformity of dosage units the thresholds allow for a hard capsule: mass variation from 25 mg and from 25 %
 * of the contents (not of the filled capsule), else content uniformity.
 *
 * @param input - dose: of this substance, mg, above 0; contents: net mass of the contents, mg, at least the dose
 * @returns the way, and the share of the contents in %
 * @throws StatsError "not-finite", "out-of-range"
 * @source Ph. Eur. 2.9.40, table 2.9.40.-1; USP <905>, table 1; ICH Q4B annex 6
 * @validity each substance by itself; below the thresholds mass variation may stand with validation data (RSD of the
 *   concentration at most 2 %) and the authority's consent (from memory); the dossier decides which test is done
 * @example dosageUnitMethod({ dose: 100, contents: 401 }).method // 'content-uniformity'
 */
export function dosageUnitMethod({ dose, contents }: DoseInContents): {
  readonly method: 'mass-variation' | 'content-uniformity';
  readonly share_pct: number;
} {
  requireWithin({ dose }, { above: 0 });
  requireWithin({ contents }, { min: dose });
  const share_pct = (100 * dose) / contents;
  const isAllowed = dose >= MASS_VARIATION.dose && share_pct >= MASS_VARIATION.share_pct;
  return { method: isAllowed ? 'mass-variation' : 'content-uniformity', share_pct };
}
