import { DomainError } from '#catalogue';
import { substanceMass_mg } from './substance-mass.ts';
import type { FixedTotal, FollowsAssay, Substance, TargetRule } from './target-rule.ts';

/** What becomes of one substance at the target fill. */
export interface SubstanceAtTarget {
  readonly name: string;
  readonly claim_mg: number;
  /** Mass as delivered that is in one capsule; left out where the rule does not weigh the substance by itself. */
  readonly mass_mg?: number;
  /** Expected mean content in % of the claim; left out when no load of the blend is known. */
  readonly content_pct?: number;
  /** Share of the claim in the contents of the capsule. */
  readonly claimShare_pct: number;
}

export interface TargetFill {
  readonly rule: TargetRule['rule'];
  /** Target mass of the part, mg net. */
  readonly fill_mg: number;
  /** What is left for the diluent, fixed total only. */
  readonly diluent_mg?: number;
  readonly substances: readonly SubstanceAtTarget[];
}

/**
 * Target mass of one part of the dose, by the rule that the dossier names.
 *
 * @param rule - fixed fill, fill that follows the assay of the blend, or fixed total with diluent
 * @returns the target with what becomes of each substance
 * @throws DomainError "excipients-above-total" (diluent below 0), "not-positive", "out-of-range", "invalid-input" (a
 *   substance to follow is not named, or has no load)
 * @source pharmacy arithmetic (mass balance), common practice; the rule itself comes from the registered dossier
 * @validity the target is a figure of the dossier: this computes it, it does not approve it
 * @example targetFill({ rule: 'fixed-fill', fill_mg: 350, substances: [] }).fill_mg // 350
 */
export function targetFill(rule: TargetRule): TargetFill {
  switch (rule.rule) {
    case 'fixed-fill': {
      if (!(rule.fill_mg > 0)) throw new DomainError('not-positive', { fill_mg: rule.fill_mg });
      const { fill_mg } = rule;
      return { rule: rule.rule, fill_mg, substances: rule.substances.map((s) => byLoad(s, fill_mg)) };
    }
    case 'follows-assay':
      return followsAssay(rule);
    case 'fixed-total':
      return fixedTotal(rule);
  }
}

function followsAssay(rule: FollowsAssay): TargetFill {
  const named = rule.follows ?? (rule.substances.length === 1 ? rule.substances[0]?.name : undefined);
  const leader = rule.substances.find((s) => s.name === named);
  if (leader?.blendLoad_pct === undefined)
    throw new DomainError('invalid-input', { fields: ['follows', 'blendLoad_pct'] });
  const { claim_mg, saltFactor_ratio = 1, overage, blendLoad_pct } = leader;
  if (!(blendLoad_pct > 0 && blendLoad_pct <= 100)) throw new DomainError('out-of-range', { blendLoad_pct });
  const fill_mg = (claim_mg * saltFactor_ratio * (1 + (overage?.amount_pct ?? 0) / 100)) / (blendLoad_pct / 100);
  if (!(fill_mg > 0)) throw new DomainError('not-positive', { fill_mg });
  return { rule: rule.rule, fill_mg, substances: rule.substances.map((s) => byLoad(s, fill_mg)) };
}

function fixedTotal(rule: FixedTotal): TargetFill {
  const { total_mg, otherExcipients_mg = 0 } = rule;
  if (!(total_mg > 0) || !(otherExcipients_mg >= 0))
    throw new DomainError('not-positive', { total_mg, otherExcipients_mg });
  const substances = rule.substances.map((s) => {
    const mass_mg = substanceMass_mg({ ...s, overage_pct: s.overage?.amount_pct ?? 0 });
    const content_pct = 100 + (s.overage?.amount_pct ?? 0);
    return { name: s.name, claim_mg: s.claim_mg, mass_mg, content_pct, claimShare_pct: (100 * s.claim_mg) / total_mg };
  });
  const substances_mg = substances.reduce((sum, s) => sum + s.mass_mg, 0);
  const diluent_mg = total_mg - substances_mg - otherExcipients_mg;
  if (diluent_mg < 0) throw new DomainError('excipients-above-total', { total_mg, substances_mg, otherExcipients_mg });
  return { rule: rule.rule, fill_mg: total_mg, diluent_mg, substances };
}

/** What a fill holds of a substance, by the load found in the blend. */
function byLoad(s: Substance, fill_mg: number): SubstanceAtTarget {
  const shared = { name: s.name, claim_mg: s.claim_mg, claimShare_pct: (100 * s.claim_mg) / fill_mg };
  if (s.blendLoad_pct === undefined) return shared;
  const pure_mg = (fill_mg * s.blendLoad_pct) / 100;
  return { ...shared, content_pct: (100 * pure_mg) / (s.claim_mg * (s.saltFactor_ratio ?? 1)) };
}
