import { pow } from '@fillwright/stats/elementary';
import type { CompressionLaw } from './compression-law.ts';

/**
 * Ram pressure that brings a plug to a mean density: the compression law solved for the pressure. It runs inside
 * search loops, so the law itself is not checked here (`densityAtPressure_g_per_mL` checks it).
 *
 * kawakita: P = C / (b (a - C)), C = 1 - rho_i/rho; walker: P = P0 10^((intercept - 100 rho_true/rho) / slope)
 *
 * @param law - the powder's compression law
 * @param density_g_per_mL - mean density of the plug
 * @returns MPa; 0 at or below the initial density (walker: at or below 0), Infinity at or beyond the densest state
 *   (kawakita: rho_i / (1 - a); walker: the true density), NaN for NaN
 * @throws nothing
 * @source Kawakita & Luedde, Powder Technology 4 (1971) 61; Walker, Trans. Faraday Soc. 19 (1923) 73 (both from memory)
 * @validity inside the pressures the law was fitted on; constants from tabletting pressures say nothing about a slug
 * @example pressureAtDensity_MPa({ kind: 'kawakita', a_frac: 0.5, b_per_MPa: 2, initialDensity_g_per_mL: 0.6 }, 0.8) // 0.5
 */
export function pressureAtDensity_MPa(law: CompressionLaw, density_g_per_mL: number): number {
  if (law.kind === 'kawakita') {
    if (density_g_per_mL <= law.initialDensity_g_per_mL) return 0;
    const reduction = 1 - law.initialDensity_g_per_mL / density_g_per_mL;
    if (reduction >= law.a_frac) return Infinity;
    return reduction / (law.b_per_MPa * (law.a_frac - reduction));
  }
  if (density_g_per_mL <= 0) return 0;
  if (density_g_per_mL >= law.trueDensity_g_per_mL) return Infinity;
  const relativeVolume_pct = (100 * law.trueDensity_g_per_mL) / density_g_per_mL;
  return law.referencePressure_MPa * pow(10, (law.intercept_pct - relativeVolume_pct) / law.slope_pct);
}
