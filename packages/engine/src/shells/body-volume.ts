import { DomainError, requireWithin } from '#catalogue';
import { innerRadius_mm } from './inner-radius.ts';

/** Outer dimensions of a body, its double wall as the gauge reads it. */
export interface BodyDimensions {
  readonly bodyLength_mm: number;
  readonly bodyOuterDiameter_mm: number;
  readonly bodyDoubleWall_mm: number;
}

/**
 * Volume of a body up to its rim: a cylinder on a hemisphere.
 *
 * V = pi r^2 (L - t - r) + 2/3 pi r^3, r = (OD - 2t) / 2, 2t the double wall
 *
 * @param body - bodyLength_mm over the closed end, bodyOuterDiameter_mm, bodyDoubleWall_mm; all > 0
 * @returns mm3
 * @throws DomainError "not-a-number", "not-positive", "out-of-range" (body shorter than its own end)
 * @source geometry; reproduces the volumes of trade charts to 5 %
 * @validity hemispherical ends; real ends are thicker and flatter than the wall, so calibrate with water where 5 % count
 * @example bodyVolume_mm3({ bodyLength_mm: 10.1, bodyOuterDiameter_mm: 6.2, bodyDoubleWall_mm: 0.2 }) // 254.46900494077323
 */
export function bodyVolume_mm3({ bodyLength_mm, bodyOuterDiameter_mm, bodyDoubleWall_mm }: BodyDimensions): number {
  const radius = innerRadius_mm({ outerDiameter_mm: bodyOuterDiameter_mm, doubleWall_mm: bodyDoubleWall_mm });
  requireWithin({ bodyLength_mm }, { above: 0 });
  const straight = bodyLength_mm - bodyDoubleWall_mm / 2 - radius;
  if (straight < 0) throw new DomainError('out-of-range', { bodyLength_mm, min: bodyLength_mm - straight });
  return Math.PI * radius * radius * (straight + (2 / 3) * radius);
}
