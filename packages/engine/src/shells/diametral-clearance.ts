import { requireWithin } from '#catalogue';
import { innerRadius_mm } from './inner-radius.ts';

/**
 * Play of the body in the cap, over the diameter.
 *
 * c = (OD_cap - 2t_cap) - OD_body
 *
 * @param shell - capOuterDiameter_mm, capDoubleWall_mm (2t), bodyOuterDiameter_mm; all > 0
 * @returns mm; below 0 the cap is stretched, or a figure is wrong
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source geometry
 * @validity round rims away from lock and groove; half of it per side, a few hundredths of a millimetre, the same order
 *   as the tolerances of the diameters
 * @example diametralClearance_mm({ capOuterDiameter_mm: 7.75, capDoubleWall_mm: 0.25, bodyOuterDiameter_mm: 7.25 }) // 0.25
 */
export function diametralClearance_mm(shell: {
  readonly capOuterDiameter_mm: number;
  readonly capDoubleWall_mm: number;
  readonly bodyOuterDiameter_mm: number;
}): number {
  const { capOuterDiameter_mm, capDoubleWall_mm, bodyOuterDiameter_mm } = shell;
  requireWithin({ bodyOuterDiameter_mm }, { above: 0 });
  const capInner_mm = 2 * innerRadius_mm({ outerDiameter_mm: capOuterDiameter_mm, doubleWall_mm: capDoubleWall_mm });
  return capInner_mm - bodyOuterDiameter_mm;
}
