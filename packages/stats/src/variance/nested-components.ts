import { requireWithin, StatsError } from '#elementary';
import { carriedSum } from './carried-sum.ts';
import { type Cell, cellOf, centred } from './cell-of.ts';
import { type RemlEstimate, remlEstimate } from './reml-estimate.ts';

/** Variances of groups, of places in groups and within places. Lists are in this order. */
export interface NestedComponents {
  readonly degreesOfFreedom: readonly [number, number, number];
  readonly sumsOfSquares: readonly [number, number, number];
  readonly meanSquares: readonly [number, number, number];
  /** Places in the mean square of places; places, then groups, in the mean square of groups. */
  readonly coefficients: readonly [number, number, number];
  /** By analysis of variance; may be negative. */
  readonly components: readonly [number, number, number];
  readonly truncated: readonly [number, number, number];
  readonly reml: RemlEstimate;
}

/**
 * Variance components of three nested levels, by analysis of variance and by restricted maximum likelihood.
 *
 * @param sample - tree: groups of places of values; two groups, one group of two places, one place of two values at least
 * @returns analysis of variance with Searle's coefficients, components as estimated and truncated at 0, REML
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (no spread inside any place)
 * @source S. R. Searle, Linear Models (1971), chapter 11 (from memory)
 * @validity places belong to one group each: what comes back in every group is crossed, not nested
 */
export function nestedComponents(sample: {
  readonly tree: readonly (readonly (readonly number[])[])[];
}): NestedComponents {
  const { tree } = sample;
  const flat = centred(tree.flat());
  const groupCount = tree.length;
  const placeCount = flat.groups.length;
  const count = flat.groups.reduce((sum, values) => sum + values.length, 0);
  if (groupCount < 2 || placeCount <= groupCount || count <= placeCount || tree.some((places) => places.length === 0))
    throw new StatsError('sample-size', { groupCount, placeCount, count });
  let next = 0;
  const cells = tree.map((places) => places.map(() => cellOf(flat.groups[next++]!)));
  const sums = sumsOf(cells, count);
  requireWithin({ withinSumOfSquares: sums.squares[2] }, { above: 0 });
  const degreesOfFreedom = [groupCount - 1, placeCount - groupCount, count - placeCount] as const;
  const [ofGroups, ofPlaces, within] = sums.squares.map((sum, i) => sum / degreesOfFreedom[i]!) as Three;
  const coefficients = [
    (count - sums.placeShare) / degreesOfFreedom[1],
    (sums.placeShare - sums.placeSquares / count) / degreesOfFreedom[0],
    (count - sums.groupSquares / count) / degreesOfFreedom[0],
  ] as const;
  const place = (ofPlaces - within) / coefficients[0];
  const group = (ofGroups - within - coefficients[1] * place) / coefficients[2];
  const reml = remlEstimate(cells, true);
  return {
    ...{ degreesOfFreedom, coefficients, sumsOfSquares: sums.squares, meanSquares: [ofGroups, ofPlaces, within] },
    components: [group, place, within],
    truncated: [Math.max(0, group), Math.max(0, place), within],
    reml: { ...reml, mean: flat.shift + reml.mean },
  };
}

type Three = [number, number, number];

function sumsOf(tree: readonly (readonly Cell[])[], total: number) {
  const cells = tree.flat();
  const groups = tree.map((places) => {
    const count = places.reduce((sum, cell) => sum + cell.count, 0);
    const mean = carriedSum(places.map((cell) => cell.count * cell.mean)) / count;
    const ofPlaces = carriedSum(places.map((cell) => cell.count * (cell.mean - mean) * (cell.mean - mean)));
    return { count, mean, ofPlaces, share: places.reduce((sum, cell) => sum + cell.count * cell.count, 0) / count };
  });
  const grand = carriedSum(groups.map(({ count, mean }) => count * mean)) / total;
  const squares: Three = [
    carriedSum(groups.map(({ count, mean }) => count * (mean - grand) * (mean - grand))),
    carriedSum(groups.map(({ ofPlaces }) => ofPlaces)),
    carriedSum(cells.map(({ sumOfSquares }) => sumOfSquares)),
  ];
  return {
    squares,
    placeShare: carriedSum(groups.map(({ share }) => share)),
    placeSquares: cells.reduce((sum, { count }) => sum + count * count, 0),
    groupSquares: groups.reduce((sum, { count }) => sum + count * count, 0),
  };
}
