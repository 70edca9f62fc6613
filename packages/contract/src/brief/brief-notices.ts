import { targetFill } from '@fillwright/engine/brief';
import type { Brief, DocumentNotice } from '@fillwright/engine/design';

/**
 * Mass variation stands for uniformity of content from this claim and this share of the contents on.
 *
 * @source Ph. Eur. 2.9.40, table 2.9.40.-1, and ICH Q4B Annex 6: hard capsules with 25 mg or more and 25 per cent or more
 *   of active substance (from memory)
 */
const MASS_VARIATION = { claim_mg: 25, share_pct: 25 } as const;

/**
 * What a person should know about a brief that is in order. Which test applies is the dossier's: nothing is refused.
 *
 * @param brief - the brief
 * @returns the notices
 */
export function briefNotices(brief: Brief): readonly DocumentNotice[] {
  const index = brief.route.findIndex(({ test }) => test === 'dosage-units-by-mass');
  if (index < 0) return [];
  const { fill_mg, substances } = targetFill(brief.parts[0].target);
  return substances
    .filter(
      ({ claim_mg, claimShare_pct }) => claim_mg < MASS_VARIATION.claim_mg || claimShare_pct < MASS_VARIATION.share_pct,
    )
    .map(({ name, claim_mg, claimShare_pct }) => ({
      code: 'mass-route-below-threshold',
      field: `route.${index}`,
      facts: {
        ...{ name, claim_mg, share_pct: claimShare_pct, fill_mg },
        ...{ leastClaim_mg: MASS_VARIATION.claim_mg, leastShare_pct: MASS_VARIATION.share_pct },
      },
    }));
}
