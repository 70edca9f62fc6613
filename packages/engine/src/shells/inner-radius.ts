import { DomainError, requireWithin } from '#catalogue';

/**
 * Inner radius of a body or cap from what can be measured on it.
 *
 * r = (OD - double wall) / 2
 *
 * @param input - outerDiameter_mm: over the wall; doubleWall_mm: gauge reading over the flattened wall, twice the wall
 * @returns mm, > 0
 * @throws DomainError "not-a-number", "not-positive", "out-of-range" (double wall not below the diameter)
 * @source geometry
 * @validity round rims; "wall thickness" in shell sheets is the double wall
 * @example innerRadius_mm({ outerDiameter_mm: 7.34, doubleWall_mm: 0.195 }) // 3.5725
 */
export function innerRadius_mm(input: { readonly outerDiameter_mm: number; readonly doubleWall_mm: number }): number {
  const { outerDiameter_mm, doubleWall_mm } = input;
  requireWithin({ outerDiameter_mm, doubleWall_mm }, { above: 0 });
  if (doubleWall_mm >= outerDiameter_mm)
    throw new DomainError('out-of-range', { doubleWall_mm, above: 0, below: outerDiameter_mm });
  return (outerDiameter_mm - doubleWall_mm) / 2;
}
