import { requireWithin } from '#catalogue';
import { slugFit, type SlugInShell } from './slug-fit.ts';

/** `by-crumbling`: it goes in, but its edges break: dust, powder in the lock, dented ends. */
export type SlugGrade = 'rigid' | 'by-crumbling' | 'does-not-fit';

/**
 * Grade of fit of a slug: rigid up to the longest slug between the domes; by crumbling while its volume is not above
 * that of the body up to the rim; else it does not fit.
 *
 * @param input - geometry, boreDiameter_mm, and slugLength_mm: after ejection, axial springback included; > 0
 * @returns the grade
 * @throws DomainError "not-a-number", "not-positive", "bore-too-wide"
 * @source rigid: geometry; limit of crumbling: common practice, no source
 * @validity geometric volume of the body, not the chart's; radial springback counts only for entering the body
 */
export function slugGrade(input: SlugInShell & { readonly slugLength_mm: number }): SlugGrade {
  const { geometry, boreDiameter_mm, slugLength_mm } = input;
  requireWithin({ slugLength_mm }, { above: 0 });
  if (slugLength_mm <= slugFit(input).longestSlug_mm) return 'rigid';
  const slugVolume_mm3 = (Math.PI / 4) * boreDiameter_mm * boreDiameter_mm * slugLength_mm;
  return slugVolume_mm3 <= geometry.bodyVolume_mm3 ? 'by-crumbling' : 'does-not-fit';
}
