import type { Powder } from '@fillwright/engine/materials';

/** The densest shade belongs to powder packed so much closer than by tapping: a slug at the strongest usual force. */
const DENSEST_OVER_TAPPED = 1.5;

/**
 * Shade of powder by its density: loosest as poured, densest well above tapped.
 *
 * @param powder - its poured and tapped density set the ends
 * @param density_g_per_mL - local or mean density
 * @returns a colour between the two powder tokens; `--void` when there is no density
 */
export function powderShade(
  { bulkDensity_g_per_mL, tappedDensity_g_per_mL }: Pick<Powder, 'bulkDensity_g_per_mL' | 'tappedDensity_g_per_mL'>,
  density_g_per_mL: number,
): string {
  const loosest = bulkDensity_g_per_mL.mean;
  const densest = DENSEST_OVER_TAPPED * tappedDensity_g_per_mL.mean;
  const share = (density_g_per_mL - loosest) / (densest - loosest);
  if (!Number.isFinite(share)) return 'var(--void)';
  // Whole per cents: a finer shade is not seen, and would paint every station at every step of a lever.
  const dense_pct = Math.round(100 * Math.min(1, Math.max(0, share)));
  return `color-mix(in srgb, var(--powder-dense) ${dense_pct}%, var(--powder-loose))`;
}
