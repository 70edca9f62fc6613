import { requireWithin } from '#elementary';
import type { Matrix } from './matrix.ts';
import { requireMatrix } from './require-matrix.ts';

export interface QrTask {
  readonly rows: Matrix;
  /**
   * `largest`: the column with the largest share left over comes next (most accurate, default); `first`: columns in the
   * order given, so that a column is left out only when it depends on those before it.
   */
  readonly pivoting?: 'largest' | 'first';
  /** A column depends on those taken when the share of its length left over is not above this; default 64 max(n, p) 2^-52. */
  readonly tolerance?: number;
}

/** X P = Q R: reflections, and the upper triangle R of the columns that were taken. */
export interface PivotedQr {
  readonly rowCount: number;
  /** Number of independent columns. */
  readonly rank: number;
  /** Columns of X in the order taken: the first `rank` are independent, the others depend on them. */
  readonly order: readonly number[];
  /** Each column of X was divided by this power of two before the work. */
  readonly scales: readonly number[];
  /** In the order taken: R above the diagonal, the vector of the reflection from the diagonal down. */
  readonly factors: readonly Float64Array[];
  /** Diagonal of R. */
  readonly diagonal: readonly number[];
  /** 2 over the squared length of each reflection's vector. */
  readonly weights: readonly number[];
}

const EPSILON = 2.220446049250313e-16;

/**
 * QR decomposition by Householder reflections with column pivoting; the rank is that of the columns brought to one length.
 *
 * @param task - rows: n x p matrix; pivoting; tolerance
 * @returns reflections, triangle, order and rank
 * @throws StatsError "sample-size", "wrong-length", "not-finite", "out-of-range" (tolerance)
 * @source G. H. Golub, C. F. Van Loan, Matrix Computations, 4th ed. (2013), 5.2.2 and 5.4.2 (from memory)
 * @validity entries from 1e-150 to 1e150 in size, and 0
 */
export function pivotedQr({ rows, pivoting = 'largest', tolerance }: QrTask): PivotedQr {
  requireMatrix(rows);
  const rowCount = rows.length;
  const columnCount = rows[0]!.length;
  const limit = tolerance ?? 64 * Math.max(rowCount, columnCount) * EPSILON;
  requireWithin({ tolerance: limit }, { min: 0, below: 1 });
  const { scales, columns } = scaledColumns(rows);
  const fullLengths = columns.map((column) => lengthFrom(column, 0));
  const order = columns.map((_, j) => j);
  const diagonal: number[] = [];
  const weights: number[] = [];
  for (let step = 0; step < Math.min(rowCount, columnCount); step++) {
    const shareOf = (j: number): number => (fullLengths[j] === 0 ? 0 : lengthFrom(columns[j]!, step) / fullLengths[j]!);
    const place = nextPlace({ shares: order.slice(step).map(shareOf), limit, pivoting });
    if (place === undefined) break;
    order.splice(step, 0, ...order.splice(step + place, 1));
    const { diagonal: entry, weight } = reflect(columns, order.slice(step), step);
    diagonal.push(entry);
    weights.push(weight);
  }
  const factors = order.map((j) => columns[j]!);
  return { rowCount, rank: diagonal.length, order, scales, factors, diagonal, weights };
}

/** Columns divided by the power of two that brings their largest entry to between 1/2 and 1: exact. */
function scaledColumns(rows: Matrix): { scales: number[]; columns: Float64Array[] } {
  const scales = rows[0]!.map((_, j) =>
    powerOfTwoAbove(rows.reduce((most, row) => Math.max(most, Math.abs(row[j]!)), 0)),
  );
  const columns = scales.map((scale, j) => Float64Array.from(rows, (row) => row[j]! / scale));
  return { scales, columns };
}

function powerOfTwoAbove(size: number): number {
  let power = 1;
  if (size === 0) return power;
  while (power <= size) power *= 2;
  while (power * 0.5 > size) power *= 0.5;
  return power;
}

function lengthFrom(column: Float64Array, start: number): number {
  let sum = 0;
  for (let i = start; i < column.length; i++) sum += column[i]! * column[i]!;
  return Math.sqrt(sum);
}

interface Choice {
  readonly shares: readonly number[];
  readonly limit: number;
  readonly pivoting: 'largest' | 'first';
}

function nextPlace({ shares, limit, pivoting }: Choice): number | undefined {
  const place = pivoting === 'first' ? shares.findIndex((share) => share > limit) : shares.indexOf(Math.max(...shares));
  return place >= 0 && shares[place]! > limit ? place : undefined;
}

/** Turns the first of the remaining columns onto axis `step` and takes the others along. */
function reflect(columns: readonly Float64Array[], remaining: readonly number[], step: number) {
  const vector = columns[remaining[0]!]!;
  const diagonal = vector[step]! > 0 ? -lengthFrom(vector, step) : lengthFrom(vector, step);
  vector[step] = vector[step]! - diagonal;
  const length = lengthFrom(vector, step);
  const weight = 2 / (length * length);
  for (const j of remaining.slice(1)) {
    const column = columns[j]!;
    let product = 0;
    for (let i = step; i < column.length; i++) product += vector[i]! * column[i]!;
    product *= weight;
    for (let i = step; i < column.length; i++) column[i] = column[i]! - product * vector[i]!;
  }
  return { diagonal, weight };
}
