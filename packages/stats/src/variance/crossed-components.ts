import { fisherSurvival } from '#distributions';
import { requireWithin, StatsError } from '#elementary';
import { carriedSum } from './carried-sum.ts';
import { cellOf, centred, squares } from './cell-of.ts';
import { crossedReml } from './crossed-reml.ts';
import { factorColumns } from './factor-columns.ts';
import { meanSquareLimits, type VarianceLimits } from './mean-square-limits.ts';

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
  /** By restricted maximum likelihood; left out where a component is negative and there are more than 400 cells. */
  readonly reml?: Four;
  /** Two-sided limits of the components, not below 0. */
  readonly low: Four;
  readonly high: Four;
  readonly total: VarianceLimits;
}

/** Cells up to which the mixed-model equations are solved. */
const MOST_CELLS = 400;

/**
 * Variance components of two crossed random factors with interaction, every cell filled with as many values.
 *
 * @param sample - cells: two rows and two columns at least of cells of two values at least, all of one size; confidence: of the
 *   limits, two-sided, above 0, below 1, 0.95 unless given
 * @returns analysis of variance, tests, components as estimated, truncated at 0 and by REML, limits of each and of their sum
 * @throws StatsError "sample-size", "wrong-length" (not every cell of one size), "not-finite", "out-of-range" (no spread
 *   within the cells or in the interaction)
 * @source S. R. Searle, G. Casella, C. E. McCulloch, Variance Components (1992), chapter 4 (from memory)
 * @validity where columns are fixed, as the places of one machine are, their component is no variance of a population;
 *   their test against the interaction stands
 */
export function crossedComponents(sample: { readonly cells: Cells; readonly confidence?: number }): CrossedComponents {
  const { cells, confidence = 0.95 } = sample;
  requireWithin({ confidence }, { above: 0, below: 1 });
  const { rowCount, columnCount, size } = shapeOf(cells);
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
  const truncated = components.map((component) => Math.max(0, component)) as unknown as Four;
  const isReml = components.every((component) => component >= 0);
  const reml = isReml ? truncated : remlOf(cells);
  return {
    ...{ degreesOfFreedom: df, sumsOfSquares: sums, meanSquares: means, f, p: [p(0), p(1), p(2)], components },
    ...{ truncated, isReml, ...(reml && { reml }) },
    ...limitsOf({ rowCount, columnCount, size, df, means }, confidence),
  };
}

type Cells = readonly (readonly (readonly number[])[])[];

function shapeOf(cells: Cells): Pick<Table, 'rowCount' | 'columnCount' | 'size'> {
  const [rowCount, columnCount, size] = [cells.length, cells[0]?.length ?? 0, cells[0]?.[0]?.length ?? 0];
  if (rowCount < 2 || columnCount < 2 || size < 2)
    throw new StatsError('sample-size', { rowCount, columnCount, size, min: 2 });
  if (cells.some((row) => row.length !== columnCount || row.some((cell) => cell.length !== size)))
    throw new StatsError('wrong-length', { rowCount, columnCount, size });
  return { rowCount, columnCount, size };
}

function remlOf(cells: Cells): Four | undefined {
  const places = cells.flatMap((row, i) => row.flatMap((cell, j) => cell.map((value) => ({ value, i, j }))));
  if (cells.length * cells[0]!.length > MOST_CELLS) return undefined;
  const factor = (name: string, level: (place: { i: number; j: number }) => number) =>
    factorColumns({ name, levels: places.map(level) }, places.length);
  const factors = [
    factor('row', ({ i }) => i),
    factor('column', ({ j }) => j),
    factor('cell', ({ i, j }) => i * cells[0]!.length + j),
  ];
  const { variances, within } = crossedReml(centred([places.map(({ value }) => value)]).groups[0]!, factors);
  return [variances[0]!, variances[1]!, variances[2]!, within];
}

interface Table {
  readonly rowCount: number;
  readonly columnCount: number;
  readonly size: number;
  readonly df: Four;
  readonly means: Four;
}

function limitsOf({ rowCount, columnCount, size, df, means }: Table, confidence: number) {
  const of = (coefficients: Four): VarianceLimits => {
    const terms = coefficients.flatMap((coefficient, i) =>
      coefficient === 0 ? [] : [{ meanSquare: means[i]!, degreesOfFreedom: df[i]!, coefficient }],
    );
    return meanSquareLimits({ terms, confidence });
  };
  const [perRow, perColumn] = [1 / (size * columnCount), 1 / (size * rowCount)];
  const parts = [
    of([perRow, 0, -perRow, 0]),
    of([0, perColumn, -perColumn, 0]),
    of([0, 0, 1 / size, -1 / size]),
    of([0, 0, 0, 1]),
  ];
  // Whole numbers first: in a table of two by two the interaction drops out of the total exactly.
  const rest = (rowCount * columnCount - rowCount - columnCount) / (size * rowCount * columnCount);
  return {
    low: parts.map(({ low }) => low) as unknown as Four,
    high: parts.map(({ high }) => high) as unknown as Four,
    total: of([perRow, perColumn, rest, 1 - 1 / size]),
  };
}

function mean(values: readonly number[]): number {
  return carriedSum(values) / values.length;
}
