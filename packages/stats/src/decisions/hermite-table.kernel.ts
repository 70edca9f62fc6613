/** Values and slopes (times the step) at equal steps from 0, side by side; read by cubic Hermite interpolation. */
export type HermiteTable = Float64Array;

/**
 * Reads a table between its points.
 *
 * @param table - values and slopes, [value 0, slope 0, value 1, ...]
 * @param position - argument in steps from 0; inside the table, not on its last point
 * @returns interpolated value
 * @throws nothing; the caller keeps the position inside
 * @source cubic Hermite interpolation; error h^4/384 times the largest fourth derivative
 */
export function readHermite(table: HermiteTable, position: number): number {
  const index = position | 0;
  const t = position - index;
  const at = index << 1;
  const value = table[at]!;
  const slope = table[at + 1]!;
  const nextSlope = table[at + 3]!;
  const rise = table[at + 2]! - value;
  return value + t * (slope + t * (3 * rise - 2 * slope - nextSlope + t * (slope + nextSlope - 2 * rise)));
}

/**
 * Slope of the interpolated curve, per step.
 *
 * @param table - values and slopes, as for `readHermite`
 * @param position - argument in steps from 0; inside the table, not on its last point
 * @returns slope times the step
 * @throws nothing; the caller keeps the position inside
 * @source derivative of the cubic of `readHermite`
 */
export function readHermiteSlope(table: HermiteTable, position: number): number {
  const index = position | 0;
  const t = position - index;
  const at = index << 1;
  const slope = table[at + 1]!;
  const nextSlope = table[at + 3]!;
  const rise = table[at + 2]! - table[at]!;
  return slope + t * (2 * (3 * rise - 2 * slope - nextSlope) + 3 * t * (slope + nextSlope - 2 * rise));
}
