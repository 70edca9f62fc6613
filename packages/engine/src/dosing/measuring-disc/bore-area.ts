/**
 * Cross-section of a round bore.
 *
 * @param boreDiameter_mm - diameter
 * @returns pi D^2 / 4, mm2
 * @throws nothing
 * @source geometry
 */
export function boreArea_mm2(boreDiameter_mm: number): number {
  return (Math.PI * boreDiameter_mm * boreDiameter_mm) / 4;
}
