import { requireWithin } from '#catalogue';

/** A column of powder between walls: friction against the wall, lateral by axial stress, length and diameter. */
export interface WallFriction {
  readonly wallFriction_ratio: number;
  readonly lateralStress_ratio: number;
  readonly length_mm: number;
  readonly diameter_mm: number;
}

/**
 * The exponent of every stress profile between walls.
 *
 * k = 4 mu K L / D
 *
 * @param column - wallFriction_ratio, lateralStress_ratio, length_mm >= 0; diameter_mm > 0
 * @returns k, dimensionless, >= 0
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source force balance on a slice of the column (Janssen 1895; Shaxby & Evans 1923; from memory)
 */
export function frictionExponent_ratio(column: WallFriction): number {
  const { wallFriction_ratio, lateralStress_ratio, length_mm, diameter_mm } = column;
  requireWithin({ wallFriction_ratio, lateralStress_ratio, length_mm }, { min: 0 });
  requireWithin({ diameter_mm }, { above: 0 });
  return (4 * wallFriction_ratio * lateralStress_ratio * length_mm) / diameter_mm;
}
