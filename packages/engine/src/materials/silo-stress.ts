import { requireWithin } from '#catalogue';
import { DEFAULT_GRAVITY_m_per_s2 } from './default-gravity.ts';
import { meanStress_frac } from './mean-stress.ts';
import type { SiloColumn } from './silo-stress-limit.ts';

/**
 * Vertical stress at a depth of a column of bulk solid: its weight less what the wall carries.
 *
 * sigma = rho g D / (4 mu K) (1 - e^-k), k = 4 mu K z / D; that is rho g z (1 - e^-k) / k, which also holds without
 * friction
 *
 * @param input - as `siloStressLimit_Pa`, mu and K may be 0; depth_m below the free surface, >= 0
 * @returns Pa; the limit of no friction is the weight of the column, rho g z
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source Janssen, Z. VDI 39 (1895) 1045 (from memory), no load on the surface
 * @validity at rest, vertical round walls, wall friction fully mobilised; beyond 2 diameters of depth the bed height no
 *   longer loads the outlet
 * @example siloStress_Pa({ density_kg_per_m3: 500, diameter_m: 1, wallFriction_ratio: 0, lateralStress_ratio: 0.4, depth_m: 0.2, gravity_m_per_s2: 10 }) // 1000
 */
export function siloStress_Pa(input: SiloColumn & { readonly depth_m: number }): number {
  const { density_kg_per_m3, diameter_m, wallFriction_ratio, lateralStress_ratio, depth_m } = input;
  const gravity_m_per_s2 = input.gravity_m_per_s2 ?? DEFAULT_GRAVITY_m_per_s2;
  requireWithin({ density_kg_per_m3, diameter_m, gravity_m_per_s2 }, { above: 0 });
  requireWithin({ depth_m }, { min: 0 });
  const carried_frac = meanStress_frac({
    wallFriction_ratio,
    lateralStress_ratio,
    length_mm: 1000 * depth_m,
    diameter_mm: 1000 * diameter_m,
  });
  return density_kg_per_m3 * gravity_m_per_s2 * depth_m * carried_frac;
}
