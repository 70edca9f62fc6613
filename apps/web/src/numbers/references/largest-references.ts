import { discBore_mm, discsFor } from '@fillwright/engine/fillers';
import { shellGeometry, slugFit } from '@fillwright/engine/shells';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import { largestSlugs } from '../../drawing/index.ts';
import type { NumberKey, NumberReference } from '../number-reference.ts';
import type { PageFacts } from './page-facts.ts';

/**
 * The heaviest slug that stays whole in each shell of the brief, packed as the one that is drawn.
 *
 * @param facts - candidate with its context
 * @returns references by size; none for a shell without known geometry or without a disc
 */
export function largestReferences(facts: PageFacts): readonly (readonly [NumberKey, NumberReference])[] {
  const { candidate, input, place } = facts;
  const { filler, material } = place.context;
  const { density_g_per_mL, bore_mm: own_mm } = candidate.prediction;
  const { origins, titles } = OPEN_NUMBER_WORDS;
  return largestSlugs(facts).flatMap(({ size, mass_mg }) => {
    const record = input.shells.find((one) => one.size === size);
    const geometry = record && shellGeometry(record);
    const isOwn = size === candidate.size;
    const disc = discsFor(filler, size)[0];
    if (geometry?.kind !== 'known' || !disc) return [];
    const boreDiameter_mm = isOwn ? own_mm : discBore_mm(disc);
    const { longestSlug_mm } = slugFit({ geometry, boreDiameter_mm });
    const { axialSpringback_pct } = material;
    const reference: NumberReference = {
      entry: 'dosing.largest-slug',
      inputs: {
        ...{ slugDensity_g_per_mL: density_g_per_mL, boreDiameter_mm, longestSlug_mm },
        axialSpringback_pct: axialSpringback_pct.mean,
      },
      origins: {
        slugDensity_g_per_mL: { number: 'density' },
        boreDiameter_mm: { words: origins.part(isOwn ? (candidate.settings.parts['disc'] ?? '') : disc.number) },
        longestSlug_mm: isOwn ? { number: 'slug-longest' } : { words: origins.shell(size) },
        axialSpringback_pct: { quantity: axialSpringback_pct },
      },
      ...{ output: 'mass_mg', title: titles.largest(size), value: mass_mg },
    };
    return [[`largest:${size}`, reference] as const];
  });
}
