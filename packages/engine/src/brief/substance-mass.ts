import { DomainError } from '#catalogue';

export interface SubstanceMassInput {
  readonly claim_mg: number;
  readonly saltFactor_ratio?: number;
  readonly assayAnhydrous_pct?: number;
  readonly water_pct?: number;
  readonly overage_pct?: number;
}

/**
 * Mass of a substance, as it is delivered, that carries the claim.
 *
 * m = claim x factor x (1 + overage) / (assay anhydrous x (1 - water))
 *
 * @param input - claim_mg > 0; saltFactor_ratio > 0 (default 1); assayAnhydrous_pct above 0, at most 110 (default 100);
 *   water_pct 0 to below 100, wet basis (default 0); overage_pct >= 0 (default 0)
 * @returns mass as weighed, mg
 * @throws DomainError "not-positive", "out-of-range"
 * @source pharmacy arithmetic (mass balance), common practice
 * @validity assay on the anhydrous basis and water on the wet basis; an assay "as is" must not be corrected for water again
 * @example substanceMass_mg({ claim_mg: 200, saltFactor_ratio: 1.12, assayAnhydrous_pct: 99.2, water_pct: 1.5 }) // 229.24...
 */
export function substanceMass_mg(input: SubstanceMassInput): number {
  const { claim_mg, saltFactor_ratio = 1, assayAnhydrous_pct = 100, water_pct = 0, overage_pct = 0 } = input;
  if (!(claim_mg > 0) || !(saltFactor_ratio > 0)) throw new DomainError('not-positive', { claim_mg, saltFactor_ratio });
  if (!(assayAnhydrous_pct > 0 && assayAnhydrous_pct <= 110 && water_pct >= 0 && water_pct < 100 && overage_pct >= 0))
    throw new DomainError('out-of-range', { assayAnhydrous_pct, water_pct, overage_pct });
  const worth_frac = (assayAnhydrous_pct / 100) * (1 - water_pct / 100);
  return (claim_mg * saltFactor_ratio * (1 + overage_pct / 100)) / worth_frac;
}
