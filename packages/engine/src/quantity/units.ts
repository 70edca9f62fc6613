/** Exact conversion factors. Nothing else in the project converts units. */

/** Standard gravity. @source 3rd CGPM (1901), exact by definition */
export const STANDARD_GRAVITY_m_per_s2 = 9.80665;

/**
 * Kilogram-force to newton.
 *
 * @param force_kgf - force, kgf
 * @returns the same force, N
 * @throws never
 * @source 3rd CGPM (1901): 1 kgf = 9.80665 N exactly
 * @example kilogramForce_N(15) // 147.09975
 */
export function kilogramForce_N(force_kgf: number): number {
  return force_kgf * STANDARD_GRAVITY_m_per_s2;
}
