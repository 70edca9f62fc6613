import { requireWithin } from '#catalogue';
import { exp } from '@fillwright/stats/elementary';

/**
 * Heckel's law: solid fraction of a compact under pressure.
 *
 * ln(1 / (1 - D)) = P / P_y + A
 *
 * @param input - pressure_MPa: >= 0; yieldPressure_MPa: mean yield pressure, > 0; intercept_ratio: A, >= 0
 * @returns solid fraction (density over true density), from 0 to 1
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source Heckel, Trans. Metall. Soc. AIME 221 (1961) 671 (from memory)
 * @validity above 10-20 MPa only: below that particles still rearrange and the line is curved. A yield pressure from
 *   tabletting must not be used at the pressure of a slug (0.7-7 MPa)
 * @example heckelSolidFraction_frac({ pressure_MPa: 0, yieldPressure_MPa: 60, intercept_ratio: 0 }) // 0
 */
export function heckelSolidFraction_frac(input: {
  readonly pressure_MPa: number;
  readonly yieldPressure_MPa: number;
  readonly intercept_ratio: number;
}): number {
  const { pressure_MPa, yieldPressure_MPa, intercept_ratio } = input;
  requireWithin({ yieldPressure_MPa }, { above: 0 });
  requireWithin({ pressure_MPa, intercept_ratio }, { min: 0 });
  return 1 - exp(-(pressure_MPa / yieldPressure_MPa + intercept_ratio));
}
