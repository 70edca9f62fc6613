import { requireWithin } from '#catalogue';
import { DEFAULT_GRAVITY_m_per_s2 } from './default-gravity.ts';

/** A column of bulk solid between vertical round walls. */
export interface SiloColumn {
  readonly density_kg_per_m3: number;
  readonly diameter_m: number;
  readonly wallFriction_ratio: number;
  readonly lateralStress_ratio: number;
  /** Left out: 9.81. */
  readonly gravity_m_per_s2?: number;
}

/**
 * Vertical stress that a deep column of bulk solid never exceeds.
 *
 * sigma = rho g D / (4 mu K)
 *
 * @param column - density_kg_per_m3, diameter_m, wallFriction_ratio mu, lateralStress_ratio K, gravity_m_per_s2; all > 0
 * @returns Pa
 * @throws DomainError "not-a-number", "not-positive"
 * @source Janssen, Z. VDI 39 (1895) 1045 (from memory), limit of great depth
 * @validity as `siloStress_Pa`
 * @example siloStressLimit_Pa({ density_kg_per_m3: 600, diameter_m: 0.5, wallFriction_ratio: 0.5, lateralStress_ratio: 0.5, gravity_m_per_s2: 10 }) // 3000
 */
export function siloStressLimit_Pa(column: SiloColumn): number {
  const { density_kg_per_m3, diameter_m, wallFriction_ratio, lateralStress_ratio } = column;
  const gravity_m_per_s2 = column.gravity_m_per_s2 ?? DEFAULT_GRAVITY_m_per_s2;
  requireWithin(
    { density_kg_per_m3, diameter_m, wallFriction_ratio, lateralStress_ratio, gravity_m_per_s2 },
    { above: 0 },
  );
  return (density_kg_per_m3 * gravity_m_per_s2 * diameter_m) / (4 * wallFriction_ratio * lateralStress_ratio);
}
