import { requireWithin } from '#catalogue';
import type { CompressionLaw } from './compression-law.ts';
import { walkerRelativeVolume_ratio } from './walker-relative-volume.ts';

/**
 * Mean density of a plug under a ram pressure.
 *
 * kawakita: rho = rho_i / (1 - C), C = a b P / (1 + b P); walker: rho = rho_true / V, V from Walker's law, at least 1
 *
 * @param law - kawakita: 0 < a_frac < 1, b_per_MPa > 0, initialDensity_g_per_mL > 0; walker: see
 *   `walkerRelativeVolume_ratio`, trueDensity_g_per_mL > 0
 * @param pressure_MPa - ram force / bore area; >= 0, walker: > 0
 * @returns g/mL; kawakita: from the initial density towards rho_i / (1 - a); walker: at most the true density
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source Kawakita & Luedde, Powder Technology 4 (1971) 61; Walker, Trans. Faraday Soc. 19 (1923) 73 (both from memory)
 * @validity inside the pressures the law was fitted on; kawakita: for the one initial packing it was fitted on
 * @example densityAtPressure_g_per_mL({ kind: 'kawakita', a_frac: 0.5, b_per_MPa: 2, initialDensity_g_per_mL: 0.6 }, 0.5) // 0.8
 */
export function densityAtPressure_g_per_mL(law: CompressionLaw, pressure_MPa: number): number {
  if (law.kind === 'walker') {
    requireWithin({ trueDensity_g_per_mL: law.trueDensity_g_per_mL }, { above: 0 });
    return law.trueDensity_g_per_mL / Math.max(1, walkerRelativeVolume_ratio({ ...law, pressure_MPa }));
  }
  const { a_frac, b_per_MPa, initialDensity_g_per_mL } = law;
  requireWithin({ a_frac }, { above: 0, below: 1 });
  requireWithin({ b_per_MPa, initialDensity_g_per_mL }, { above: 0 });
  requireWithin({ pressure_MPa }, { min: 0 });
  const product = b_per_MPa * pressure_MPa;
  return initialDensity_g_per_mL / (1 - (a_frac * product) / (1 + product));
}
