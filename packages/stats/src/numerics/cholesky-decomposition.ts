import { log, StatsError } from '#elementary';
import type { Matrix } from './matrix.ts';
import { requireMatrix } from './require-matrix.ts';

export interface CholeskyDecomposition {
  /** L of A = L L'; 0 above the diagonal. */
  readonly lower: Matrix;
  /** Natural logarithm of the determinant of A. */
  readonly logDeterminant: number;
}

const EPSILON = 2.220446049250313e-16;

/**
 * Cholesky decomposition of a symmetric, positive definite matrix.
 *
 * @param rows - n x n matrix; only the lower triangle is read
 * @returns lower triangle and log determinant
 * @throws StatsError "sample-size", "wrong-length" (not square), "not-finite", "not-positive-definite" (its row, from 0)
 * @source G. H. Golub, C. F. Van Loan, Matrix Computations, 4th ed. (2013), 4.2 (from memory)
 * @validity a pivot not above n 2^-52 of its diagonal entry counts as 0
 */
export function choleskyDecomposition(rows: Matrix): CholeskyDecomposition {
  requireMatrix(rows);
  const n = rows.length;
  if (rows[0]!.length !== n) throw new StatsError('wrong-length', { rowCount: n, columnCount: rows[0]!.length });
  const lower = rows.map(() => Array<number>(n).fill(0));
  let logDeterminant = 0;
  for (let j = 0; j < n; j++) {
    const pivotRow = lower[j]!;
    const pivot = rows[j]![j]! - partialProduct(pivotRow, pivotRow, j);
    if (!(pivot > n * EPSILON * rows[j]![j]!)) throw new StatsError('not-positive-definite', { row: j, pivot });
    const root = Math.sqrt(pivot);
    pivotRow[j] = root;
    logDeterminant += log(pivot);
    for (let i = j + 1; i < n; i++) lower[i]![j] = (rows[i]![j]! - partialProduct(lower[i]!, pivotRow, j)) / root;
  }
  return { lower, logDeterminant };
}

function partialProduct(left: readonly number[], right: readonly number[], length: number): number {
  let sum = 0;
  for (let k = 0; k < length; k++) sum += left[k]! * right[k]!;
  return sum;
}
