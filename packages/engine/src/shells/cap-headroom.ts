import { DomainError, requireWithin } from '#catalogue';
import { innerRadius_mm } from './inner-radius.ts';

/**
 * Room in the locked cap above the rim of the body.
 *
 * h = closed - body - 2t/2; V = pi h^2 (r - h/3) in the dome, above it the cylinder is added; r inner radius, 2t double
 * wall of the cap
 *
 * @param shell - closedLength_mm locked, over both ends; bodyLength_mm; capOuterDiameter_mm; capDoubleWall_mm
 * @returns headroom_mm: height, > 0; headroomVolume_mm3: its volume. A flat slug cannot use all of it, see `slugFit`
 * @throws DomainError "not-a-number", "not-positive", "out-of-range" (closed length too short for this body)
 * @source geometry
 * @validity hemispherical ends; the wall of the body inside the cap is neglected
 * @example capHeadroom({ closedLength_mm: 21.7, bodyLength_mm: 18.44, capOuterDiameter_mm: 7.64, capDoubleWall_mm: 0.205 }).headroom_mm // 3.1575
 */
export function capHeadroom(shell: {
  readonly closedLength_mm: number;
  readonly bodyLength_mm: number;
  readonly capOuterDiameter_mm: number;
  readonly capDoubleWall_mm: number;
}): { readonly headroom_mm: number; readonly headroomVolume_mm3: number } {
  const { closedLength_mm, bodyLength_mm, capOuterDiameter_mm, capDoubleWall_mm } = shell;
  const radius = innerRadius_mm({ outerDiameter_mm: capOuterDiameter_mm, doubleWall_mm: capDoubleWall_mm });
  requireWithin({ closedLength_mm, bodyLength_mm }, { above: 0 });
  const headroom_mm = closedLength_mm - bodyLength_mm - capDoubleWall_mm / 2;
  if (headroom_mm <= 0)
    throw new DomainError('out-of-range', { closedLength_mm, above: bodyLength_mm + capDoubleWall_mm / 2 });
  const inDome = Math.min(headroom_mm, radius);
  const headroomVolume_mm3 =
    Math.PI * (inDome * inDome * (radius - inDome / 3) + radius * radius * (headroom_mm - inDome));
  return { headroom_mm, headroomVolume_mm3 };
}
