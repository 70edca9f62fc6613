import { DomainError } from '#catalogue';
import { boreArea_mm2 } from './bore-area.ts';

export interface DiscRecurrenceInput {
  readonly feedDensity_g_per_mL: number;
  readonly boreDiameter_mm: number;
  readonly discHeight_mm: number;
  /** Depth of each pin at its stop, first station first. */
  readonly depths_mm: readonly number[];
  /** Refill factor of each station. */
  readonly refills_ratio: readonly number[];
}

/**
 * Geometric fill of a measuring disc: mass in the bore before the first tamp and after each refill, every pin on its stop.
 *
 * m_0 = rho0 A H; m_k = m_(k-1) + f_k rho0 A p_k
 *
 * @param input - feed density > 0; bore diameter and disc height > 0; one depth (0 to below the disc height) and one
 *   refill factor (>= 0) per station, lists of the same length
 * @returns masses, mg, m_0 first: one more than stations
 * @throws DomainError "not-positive", "out-of-range" (a depth), "unlike-lengths"
 * @source geometric stepwise-fill model of tamping discs; derived, no published worked example found
 * @validity only while no spring yields: see the station model for pins on spring
 * @example discRecurrence_mg({ feedDensity_g_per_mL: 0.5, boreDiameter_mm: 6.6, discHeight_mm: 16, depths_mm: [4], refills_ratio: [1] }) // [273.695..., 342.119...]
 */
export function discRecurrence_mg(input: DiscRecurrenceInput): readonly number[] {
  const { feedDensity_g_per_mL, boreDiameter_mm, discHeight_mm, depths_mm, refills_ratio } = input;
  if (!(feedDensity_g_per_mL > 0 && boreDiameter_mm > 0 && discHeight_mm > 0))
    throw new DomainError('not-positive', { feedDensity_g_per_mL, boreDiameter_mm, discHeight_mm });
  if (depths_mm.length !== refills_ratio.length) throw new DomainError('unlike-lengths', { depths_mm, refills_ratio });
  const perMillimetre_mg = feedDensity_g_per_mL * boreArea_mm2(boreDiameter_mm);
  const masses_mg = [perMillimetre_mg * discHeight_mm];
  depths_mm.forEach((depth_mm, k) => {
    if (!(depth_mm >= 0 && depth_mm < discHeight_mm))
      throw new DomainError('out-of-range', { depth_mm, discHeight_mm });
    masses_mg.push((masses_mg[k] ?? NaN) + (refills_ratio[k] ?? NaN) * perMillimetre_mg * depth_mm);
  });
  return masses_mg;
}
