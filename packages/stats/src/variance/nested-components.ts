import { requireWithin, StatsError } from '#elementary';
import { carriedSum } from './carried-sum.ts';
import { type Cell, cellOf, centred } from './cell-of.ts';
import { meanSquareLimits, type VarianceLimits } from './mean-square-limits.ts';
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
  /** Two-sided, of each component and of their sum; only where all groups and all places have one size. */
  readonly limits?: { readonly components: readonly VarianceLimits[]; readonly total: VarianceLimits };
  readonly reml: RemlEstimate;
}

/**
 * Variance components of three nested levels, by analysis of variance and by restricted maximum likelihood.
 *
 * @param sample - tree: groups of places of values; two groups, one group of two places, one place of two values at least;
 *   confidence: of the limits, two-sided, above 0, below 1, 0.95 unless given
 * @returns analysis of variance with Searle's coefficients, components as estimated and truncated at 0, their limits for groups
 *   and places of one size, REML
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (no spread inside any place)
 * @source S. R. Searle, Linear Models (1971), chapter 11 (from memory)
 * @validity places belong to one group each: what comes back in every group is crossed, not nested
 */
export function nestedComponents(sample: {
  readonly tree: readonly (readonly (readonly number[])[])[];
  readonly confidence?: number;
}): NestedComponents {
  const { tree, confidence = 0.95 } = sample;
  requireWithin({ confidence }, { above: 0, below: 1 });
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
    ...(isBalanced(tree) && { limits: limitsOf(tree, [ofGroups, ofPlaces, within], confidence) }),
    reml: { ...reml, mean: flat.shift + reml.mean },
  };
}

type Three = [number, number, number];
type Tree = readonly (readonly (readonly number[])[])[];

function isBalanced(tree: Tree): boolean {
  const [placeCount, size] = [tree[0]!.length, tree[0]![0]!.length];
  return tree.every((places) => places.length === placeCount && places.every((values) => values.length === size));
}

/** Of groups and places of one size. */
function limitsOf(tree: Tree, meanSquares: Three, confidence: number): NonNullable<NestedComponents['limits']> {
  const [groupCount, placeCount, size] = [tree.length, tree[0]!.length, tree[0]![0]!.length];
  const df = [groupCount - 1, groupCount * (placeCount - 1), groupCount * placeCount * (size - 1)];
  const of = (coefficients: Three): VarianceLimits => {
    const terms = coefficients.flatMap((coefficient, i) =>
      coefficient === 0 ? [] : [{ meanSquare: meanSquares[i]!, degreesOfFreedom: df[i]!, coefficient }],
    );
    return meanSquareLimits({ terms, confidence });
  };
  const [perGroup, perPlace] = [1 / (placeCount * size), 1 / size];
  return {
    components: [of([perGroup, -perGroup, 0]), of([0, perPlace, -perPlace]), of([0, 0, 1])],
    total: of([perGroup, (placeCount - 1) * perGroup, (size - 1) * perPlace]),
  };
}

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
