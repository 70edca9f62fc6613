import { fisherSurvival } from '#distributions';
import { requireWithin, StatsError } from '#elementary';
import { carriedSum } from './carried-sum.ts';
import { cellOf, centred, squares } from './cell-of.ts';

type Four = readonly [number, number, number, number];

/** Analysis of rows crossed with columns. Lists of four: rows, columns, interaction, within cells. */
export interface CrossedComponents {
  readonly degreesOfFreedom: Four;
  readonly sumsOfSquares: Four;
  readonly meanSquares: Four;
  /** Rows and columns against the interaction, the interaction against within. */
  readonly f: readonly [number, number, number];
  readonly p: readonly [number, number, number];
  /** By analysis of variance; may be negative. */
  readonly components: Four;
  readonly truncated: Four;
  /** No component is negative: restricted maximum likelihood then says the same. */
  readonly isReml: boolean;
}

/**
 * Variance components of two crossed random factors with interaction, every cell filled with as many values.
 *
 * @param sample - cells: two rows and two columns at least of cells of two values at least, all of one size
 * @returns analysis of variance, tests, components as estimated and truncated at 0
 * @throws StatsError "sample-size", "wrong-length" (not every cell of one size), "not-finite", "out-of-range" (no spread
 *   within the cells or in the interaction)
 * @source S. R. Searle, G. Casella, C. E. McCulloch, Variance Components (1992), chapter 4 (from memory)
 * @validity where columns are fixed, as the places of one machine are, their component is no variance of a population;
 *   their test against the interaction stands
 */
export function crossedComponents(sample: {
  readonly cells: readonly (readonly (readonly number[])[])[];
}): CrossedComponents {
  const { cells } = sample;
  const [rowCount, columnCount, size] = [cells.length, cells[0]?.length ?? 0, cells[0]?.[0]?.length ?? 0];
  if (rowCount < 2 || columnCount < 2 || size < 2)
    throw new StatsError('sample-size', { rowCount, columnCount, size, min: 2 });
  if (cells.some((row) => row.length !== columnCount || row.some((cell) => cell.length !== size)))
    throw new StatsError('wrong-length', { rowCount, columnCount, size });
  const found = centred(cells.flat()).groups.map(cellOf);
  const table = cells.map((_, i) => found.slice(i * columnCount, (i + 1) * columnCount).map(({ mean }) => mean));
  const grand = mean(table.flat());
  const rows = table.map((row) => mean(row) - grand);
  const columns = table[0]!.map((_, j) => mean(table.map((row) => row[j]!)) - grand);
  const rest = table.flatMap((row, i) => row.map((value, j) => value - grand - rows[i]! - columns[j]!));
  const sums = [
    columnCount * size * squares(rows),
    rowCount * size * squares(columns),
    size * squares(rest),
    carriedSum(found.map(({ sumOfSquares }) => sumOfSquares)),
  ] as const;
  requireWithin({ interactionSumOfSquares: sums[2], withinSumOfSquares: sums[3] }, { above: 0 });
  const df = [
    ...[rowCount - 1, columnCount - 1, (rowCount - 1) * (columnCount - 1)],
    rowCount * columnCount * (size - 1),
  ] as unknown as Four;
  const means = sums.map((sum, i) => sum / df[i]!) as unknown as Four;
  const [ofRows, ofColumns, interaction, within] = means;
  const f = [ofRows / interaction, ofColumns / interaction, interaction / within] as const;
  const p = (k: 0 | 1 | 2): number =>
    fisherSurvival({ x: f[k], numeratorDf: df[k], denominatorDf: df[k === 2 ? 3 : 2] });
  const components: Four = [
    (ofRows - interaction) / (size * columnCount),
    (ofColumns - interaction) / (size * rowCount),
    (interaction - within) / size,
    within,
  ];
  return {
    ...{ degreesOfFreedom: df, sumsOfSquares: sums, meanSquares: means, f, p: [p(0), p(1), p(2)], components },
    truncated: components.map((component) => Math.max(0, component)) as unknown as Four,
    isReml: components.every((component) => component >= 0),
  };
}

function mean(values: readonly number[]): number {
  return carriedSum(values) / values.length;
}
