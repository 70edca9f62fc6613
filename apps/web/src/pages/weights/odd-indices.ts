import type { WeightsJudgement, WheelOfRevolution } from '@fillwright/engine/weights';

/**
 * Capsules to mark: outside single limits, flagged as far from the others, or of an odd place of a revolution.
 *
 * @param judgement - of the weights
 * @param wheel - by which the weights of a revolution are in order
 * @returns their indices
 */
export function oddIndices(judgement: WeightsJudgement, wheel: WheelOfRevolution | undefined): ReadonlySet<number> {
  const { limits, outliers, revolution } = judgement;
  const named = [...limits.flatMap(({ outside }) => outside), ...outliers].map(({ index }) => index);
  if (!revolution || !wheel) return new Set(named);
  const oddOf = (places: readonly { readonly index: number; readonly isOdd: boolean }[]): ReadonlySet<number> =>
    new Set(places.filter(({ isOdd }) => isOdd).map(({ index }) => index - 1));
  const [columns, groups] = [oddOf(revolution.columns), oddOf(revolution.groups)];
  const placed = Array.from({ length: wheel.groupCount * wheel.columnCount }, (_, index) => index).filter(
    (index) => columns.has(index % wheel.columnCount) || groups.has(Math.floor(index / wheel.columnCount)),
  );
  return new Set([...named, ...placed]);
}
