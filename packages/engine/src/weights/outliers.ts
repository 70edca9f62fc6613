/** Place of a capsule among the weights, from 0: no unit. */
type CapsuleIndex = number;

/** Modified z-score from which a value is flagged. */
const FAR_SCORE = 3.5;
/** The MAD of a normal law is 0.6745 standard deviations; the mean absolute deviation 0.7979. */
const MAD_SHARE = 0.6745;
const MEAN_DEVIATION_SHARE = 0.7979;

/**
 * Values far from the others by the modified z-score, 0.6745 (x - median) / MAD beyond 3.5. Flagged, never dropped.
 *
 * @param masses_mg - finite masses; fewer than 3 flag nothing
 * @returns their indices, from 0
 * @throws nothing
 * @source B. Iglewicz, D. C. Hoaglin (1993), How to detect and handle outliers, ASQ: as given in the NIST/SEMATECH e-Handbook
 *   1.3.5.17 (from memory); MAD 0: mean absolute deviation in its place
 * @validity a heap with one peak; two heaps of equal size flag nothing
 */
export function outliers(masses_mg: readonly number[]): readonly CapsuleIndex[] {
  if (masses_mg.length < 3) return [];
  const middle_mg = median(masses_mg);
  const deviations = masses_mg.map((mass_mg) => Math.abs(mass_mg - middle_mg));
  const mad_mg = median(deviations);
  const mean_mg = deviations.reduce((sum, deviation) => sum + deviation, 0) / deviations.length;
  const sd_mg = mad_mg > 0 ? mad_mg / MAD_SHARE : mean_mg / MEAN_DEVIATION_SHARE;
  return deviations.flatMap((deviation, i) => (deviation > FAR_SCORE * sd_mg ? [i] : []));
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
