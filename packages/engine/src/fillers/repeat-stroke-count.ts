/**
 * After how many strokes the same group meets the same carrier again. Fewer than groups x carriers means that some
 * pairs never meet: their effects are aliased and no amount of data tells them apart.
 *
 * @param wheels - dosing groups of the disc and carriers of the turret, whole numbers from 1
 * @returns least common multiple of groups and carriers, in strokes
 * @throws never
 * @source arithmetic; 6 groups on 12 carriers repeat after 12 strokes, 6 on 10 after 30 (practice of this project)
 * @validity both wheels advance by one pitch per stroke
 */
export function repeatStrokeCount({
  groupCount,
  carrierCount,
}: {
  readonly groupCount: number;
  readonly carrierCount: number;
}): number {
  const [a, b] = [groupCount, carrierCount];
  let [x, y] = [a, b];
  while (y > 0) [x, y] = [y, x % y];
  return (a * b) / x;
}
