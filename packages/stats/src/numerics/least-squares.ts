import { requireWithin, StatsError } from '#elementary';
import { accurateDot } from './accurate-dot.ts';
import type { Matrix } from './matrix.ts';
import { pivotedQr, type PivotedQr, type QrTask } from './pivoted-qr.ts';
import { type AugmentedSystem, refinedSolution } from './refined-solution.ts';
import { reflected } from './reflected.ts';
import { solvedTriangle } from './solved-triangle.ts';

export interface LeastSquaresTask extends QrTask {
  /** Right side, one value per row. */
  readonly values: readonly number[];
  /** Only the solution, not refined: for the steps of a search. The inverse is then empty, leverages too. */
  readonly isPlain?: boolean;
}

export interface LeastSquaresSolution {
  /** One per column; 0 for the columns in `dependent`. */
  readonly coefficients: readonly number[];
  readonly rank: number;
  /** Columns left out because they depend on the others, counted from 0, ascending. */
  readonly dependent: readonly number[];
  readonly residuals: readonly number[];
  readonly residualSumOfSquares: number;
  /** (X'X)^-1 of the columns kept; rows and columns of those left out are 0. */
  readonly inverse: Matrix;
  /** Diagonal of the projection on the columns, one per row. */
  readonly leverages: readonly number[];
  /** Condition number of the kept columns brought to one length (1-norm of their triangle): its decimal logarithm is about the digits lost. */
  readonly condition: number;
}

/**
 * Least squares by pivoted QR with iterative refinement.
 *
 * @param task - rows: n x p matrix; values: n; pivoting and tolerance as for `pivotedQr`
 * @returns coefficients, what is left over, the inverse of X'X, leverages; columns that depend on others are named
 * @throws StatsError "sample-size", "wrong-length", "not-finite", "out-of-range"
 * @source see `pivotedQr`, `refinedSolution`
 * @validity as there; fewer rows than columns are taken, the columns left over are then dependent
 */
export function leastSquares({ values, isPlain = false, ...task }: LeastSquaresTask): LeastSquaresSolution {
  const qr = pivotedQr(task);
  if (values.length !== qr.rowCount)
    throw new StatsError('wrong-length', { rowCount: qr.rowCount, valueCount: values.length });
  for (const [row, value] of values.entries()) requireWithin({ [`values.${row}`]: value });
  const system = systemOf(qr, task.rows);
  const scale = largestPowerOfTwo(values);
  const { solution, remainder } = refinedSolution({
    ...system,
    values: values.map((value) => value / scale),
    ...(isPlain && { mostRounds: 1 }),
  });
  const coefficients = Array<number>(qr.order.length).fill(0);
  for (const [k, x] of solution.entries()) coefficients[qr.order[k]!] = (x / qr.scales[qr.order[k]!]!) * scale;
  const residuals = Array.from(remainder, (value) => value * scale);
  return {
    coefficients,
    rank: qr.rank,
    dependent: qr.order.slice(qr.rank).toSorted((a, b) => a - b),
    residuals,
    residualSumOfSquares: accurateDot({ left: remainder, right: remainder }) * scale * scale,
    inverse: isPlain ? [] : inverseOf(system),
    leverages: isPlain ? [] : leveragesOf(qr),
    condition: conditionOf(qr),
  };
}

function systemOf(qr: PivotedQr, rows: Matrix): AugmentedSystem {
  const kept = qr.order.slice(0, qr.rank);
  const scaledRows = rows.map((row) => kept.map((j) => row[j]! / qr.scales[j]!));
  const columns = kept.map((_, k) => scaledRows.map((row) => row[k]!));
  return { qr, rows: scaledRows, columns };
}

function largestPowerOfTwo(values: readonly number[]): number {
  const most = values.reduce((size, value) => Math.max(size, Math.abs(value)), 0);
  let power = 1;
  while (most > 0 && power < most) power *= 2;
  while (most > 0 && power > 2 * most) power *= 0.5;
  return power;
}

/** Column by column from the refined system with A'r = -e: then A'A x = e. */
function inverseOf(system: AugmentedSystem): Matrix {
  const { order, rank, scales } = system.qr;
  const inverse = order.map(() => Array<number>(order.length).fill(0));
  for (let k = 0; k < rank; k++) {
    const moments = Array.from({ length: rank }, (_, i) => (i === k ? -1 : 0));
    const { solution } = refinedSolution({ ...system, moments });
    for (let i = 0; i < rank; i++)
      inverse[order[i]!]![order[k]!] = solution[i]! / scales[order[i]!]! / scales[order[k]!]!;
  }
  return inverse.map((row, i) => row.map((value, j) => 0.5 * (value + inverse[j]![i]!)));
}

/** Squared lengths of the rows of Q. */
function leveragesOf(qr: PivotedQr): number[] {
  const leverages = Array<number>(qr.rowCount).fill(0);
  for (let k = 0; k < qr.rank; k++) {
    const axis = new Float64Array(qr.rowCount);
    axis[k] = 1;
    for (const [i, value] of reflected(qr, axis, 'back').entries()) leverages[i] = leverages[i]! + value * value;
  }
  return leverages.map((value) => Math.min(value, 1));
}

function conditionOf(qr: PivotedQr): number {
  const { rank, factors, diagonal } = qr;
  const lengths = diagonal.map((entry, k) =>
    Math.sqrt(factors[k]!.subarray(0, k).reduce((sum, value) => sum + value * value, entry * entry)),
  );
  const sums = { triangle: 0, inverse: 0 };
  for (let k = 0; k < rank; k++) {
    const above = factors[k]!.subarray(0, k).reduce((sum, value) => sum + Math.abs(value), Math.abs(diagonal[k]!));
    sums.triangle = Math.max(sums.triangle, above / lengths[k]!);
    const axis = new Float64Array(rank);
    axis[k] = 1;
    const column = solvedTriangle(qr, axis, 'upper');
    sums.inverse = Math.max(
      sums.inverse,
      column.reduce((sum, value, i) => sum + Math.abs(value) * lengths[i]!, 0),
    );
  }
  return sums.triangle * sums.inverse;
}
