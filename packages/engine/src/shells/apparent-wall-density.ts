import { DomainError, requireWithin } from '#catalogue';
import { innerRadius_mm } from './inner-radius.ts';

/** One half of a shell from outside. */
interface Half {
  readonly length_mm: number;
  readonly outerDiameter_mm: number;
  readonly doubleWall_mm: number;
}

/**
 * Density that the material of a shell would have if the wall were as thin everywhere as the gauge reads it.
 *
 * rho = m / (S_b t_b + S_c t_c), S = pi D_m (L - OD/2) + 2 pi (D_m/2)^2, D_m = OD - t, t half the double wall
 *
 * @param shell - shellMass_mg; length, outer diameter and double wall of body and cap; all > 0
 * @returns g/mL
 * @throws DomainError "not-a-number", "not-positive", "out-of-range" (a half shorter than its end)
 * @source geometry, hemispherical ends of even wall
 * @validity a trap to look at, not a property: ends and shoulders are thicker than the wall, so it comes out well above
 *   the 1.3 g/mL of the material. Never work out shell mass from the wall gauge
 */
export function apparentWallDensity_g_per_mL(shell: {
  readonly shellMass_mg: number;
  readonly bodyLength_mm: number;
  readonly bodyOuterDiameter_mm: number;
  readonly bodyDoubleWall_mm: number;
  readonly capLength_mm: number;
  readonly capOuterDiameter_mm: number;
  readonly capDoubleWall_mm: number;
}): number {
  requireWithin({ ...shell }, { above: 0 });
  const body = wallVolume_mm3({
    length_mm: shell.bodyLength_mm,
    outerDiameter_mm: shell.bodyOuterDiameter_mm,
    doubleWall_mm: shell.bodyDoubleWall_mm,
  });
  const cap = wallVolume_mm3({
    length_mm: shell.capLength_mm,
    outerDiameter_mm: shell.capOuterDiameter_mm,
    doubleWall_mm: shell.capDoubleWall_mm,
  });
  return shell.shellMass_mg / (body + cap);
}

function wallVolume_mm3(half: Half): number {
  innerRadius_mm(half);
  const straight_mm = half.length_mm - half.outerDiameter_mm / 2;
  if (straight_mm < 0)
    throw new DomainError('out-of-range', { length_mm: half.length_mm, min: half.outerDiameter_mm / 2 });
  const wall_mm = half.doubleWall_mm / 2;
  const middle_mm = half.outerDiameter_mm - wall_mm;
  return wall_mm * (Math.PI * middle_mm * straight_mm + (Math.PI / 2) * middle_mm * middle_mm);
}
