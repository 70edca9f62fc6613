/** Contents of a lot's units, % of the claim, as one test of the route judges them. */
export interface LotOfUnits {
  readonly mean_pct: number;
  /** What moves the whole lot, one sd. */
  readonly bias_pct: number;
  /** By content the concentration of the blend counts; by mass variation x_i = w_i A / mean(w): it drops out. */
  readonly judged: 'by-content' | 'by-mass-variation';
  /** Spread of the concentration between units of fill; by content only. */
  readonly blend_pct: number;
}

/**
 * Spread of the content between units from the spread of the fill.
 *
 * @param lot - mean content, how it is judged, spread of the concentration
 * @param fill_pct - spread of the fill between capsules
 * @returns one standard deviation, % of the claim
 * @throws nothing
 * @source CV^2 = CV_fill^2 + CV_concentration^2 by content, x_i = w_i A / mean(w) by mass variation (USP <905>, Ph. Eur.
 *   2.9.40, JP 6.02)
 */
export function unitSdOfLot_pct({ judged, mean_pct, blend_pct }: LotOfUnits, fill_pct: number): number {
  if (judged === 'by-mass-variation') return (fill_pct * mean_pct) / 100;
  return Math.sqrt(fill_pct * fill_pct + blend_pct * blend_pct);
}
