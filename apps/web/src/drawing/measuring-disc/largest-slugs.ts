import { shellGeometry, slugFit } from '@fillwright/engine/shells';
import { discBore_mm, discsFor } from '@fillwright/engine/fillers';
import type { DrawnSetUp } from '../method-drawing.ts';

/** The heaviest slug that stays whole in a shell, at the density of the drawn one. */
export interface LargestSlug {
  readonly size: string;
  readonly mass_mg: number;
}

/**
 * How much each shell of the brief would hold as a whole slug of its own bore, packed as the one that is drawn.
 *
 * @param setUp - shells of the brief, discs in stock, density and springback
 * @returns shells for which there is a disc, lightest first
 */
export function largestSlugs({
  input,
  place,
  candidate,
}: Pick<DrawnSetUp, 'input' | 'place' | 'candidate'>): readonly LargestSlug[] {
  const { filler, material } = place.context;
  const { density_g_per_mL, bore_mm: drawn_mm } = candidate.prediction;
  const springback = 1 + material.axialSpringback_pct.mean / 100;
  return input.shells
    .flatMap((record): readonly LargestSlug[] => {
      const geometry = shellGeometry(record);
      const [disc] = discsFor(filler, record.size);
      if (geometry.kind !== 'known' || !disc) return [];
      const bore_mm = record.size === candidate.size ? drawn_mm : discBore_mm(disc);
      if (bore_mm / 2 >= Math.min(geometry.bodyInnerRadius_mm, geometry.capInnerRadius_mm)) return [];
      const { longestSlug_mm } = slugFit({ geometry, boreDiameter_mm: bore_mm });
      const area_mm2 = (Math.PI * bore_mm * bore_mm) / 4;
      return [{ size: record.size, mass_mg: (density_g_per_mL * area_mm2 * longestSlug_mm) / springback }];
    })
    .sort((a, b) => a.mass_mg - b.mass_mg);
}
