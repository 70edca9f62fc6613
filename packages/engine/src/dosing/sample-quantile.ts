/**
 * Quantile of sorted values, interpolated at p (n - 1).
 *
 * @param sorted - ascending, n >= 1
 * @param share_frac - 0 to 1
 * @returns the quantile in the unit of the values
 * @throws nothing
 * @source Hyndman & Fan (1996) type 7
 */
export function sampleQuantile(sorted: Sorted, share_frac: number): UnitOfData {
  const at = share_frac * (sorted.length - 1);
  const below = Math.floor(at);
  const low = sorted[below] ?? NaN;
  return low + (at - below) * ((sorted[below + 1] ?? low) - low);
}

/** Ascending values in the unit of whatever they are. */
type Sorted = Readonly<Float64Array>;
/** A number in the unit of the values it was made from. */
type UnitOfData = number;
