import { StatsError } from '#elementary';
import type { Matrix } from './matrix.ts';
import { requireMatrix } from './require-matrix.ts';

export interface SymmetricEigen {
  /** Ascending. */
  readonly values: readonly number[];
  /** vectors[k] belongs to values[k]: length 1, its largest component positive. */
  readonly vectors: Matrix;
}

const MOST_SWEEPS = 60;

/**
 * Eigenvalues and eigenvectors of a symmetric matrix by cyclic Jacobi rotations.
 *
 * @param rows - n x n matrix
 * @returns eigenvalues ascending, with their vectors
 * @throws StatsError "sample-size", "wrong-length" (not square), "not-finite", "not-symmetric" (row and column, from 0)
 * @source G. H. Golub, C. F. Van Loan, Matrix Computations, 4th ed. (2013), 8.5 (from memory)
 * @validity entries below 1e150 in size; meant for up to some hundred rows
 */
export function symmetricEigen(rows: Matrix): SymmetricEigen {
  requireMatrix(rows);
  requireSymmetric(rows);
  const a = rows.map((row) => [...row]);
  const vectors = rows.map((_, i) => rows.map((_row, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) if (!hasSwept(a, vectors)) break;
  const order = a.map((_, k) => k).sort((i, j) => a[i]![i]! - a[j]![j]!);
  return { values: order.map((k) => a[k]![k]!), vectors: order.map((k) => upright(vectors[k]!)) };
}

/** One rotation for every pair above the diagonal; false when nothing was left to turn. */
function hasSwept(a: number[][], vectors: number[][]): boolean {
  let hasTurned = false;
  for (let p = 0; p < a.length; p++)
    for (let q = p + 1; q < a.length; q++) {
      const off = a[p]![q]!;
      const least = Math.min(Math.abs(a[p]![p]!), Math.abs(a[q]![q]!));
      // Small enough to change neither of the two eigenvalues.
      if (off === 0 || least + 0.01 * Math.abs(off) === least) continue;
      hasTurned = true;
      rotate({ a, vectors, p, q });
    }
  return hasTurned;
}

function rotate({ a, vectors, p, q }: { a: number[][]; vectors: number[][]; p: number; q: number }): void {
  const theta = (a[q]![q]! - a[p]![p]!) / (2 * a[p]![q]!);
  const tangent = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
  const cosine = 1 / Math.sqrt(tangent * tangent + 1);
  const sine = tangent * cosine;
  const shift = tangent * a[p]![q]!;
  a[p]![p] = a[p]![p]! - shift;
  a[q]![q] = a[q]![q]! + shift;
  a[p]![q] = 0;
  a[q]![p] = 0;
  for (let k = 0; k < a.length; k++) {
    if (k !== p && k !== q) {
      const [left, right] = [a[k]![p]!, a[k]![q]!];
      a[k]![p] = a[p]![k] = cosine * left - sine * right;
      a[k]![q] = a[q]![k] = sine * left + cosine * right;
    }
    const [first, second] = [vectors[p]![k]!, vectors[q]![k]!];
    vectors[p]![k] = cosine * first - sine * second;
    vectors[q]![k] = sine * first + cosine * second;
  }
}

function upright(vector: readonly number[]): number[] {
  const largest = vector.reduce((most, value) => (Math.abs(value) > Math.abs(most) ? value : most), 0);
  return vector.map((value) => (largest < 0 ? -value : value));
}

function requireSymmetric(rows: Matrix): void {
  if (rows[0]!.length !== rows.length)
    throw new StatsError('wrong-length', { rowCount: rows.length, columnCount: rows[0]!.length });
  const most = Math.max(...rows.flat().map(Math.abs));
  for (let i = 0; i < rows.length; i++)
    for (let j = 0; j < i; j++)
      if (Math.abs(rows[i]![j]! - rows[j]![i]!) > 1e-12 * most)
        throw new StatsError('not-symmetric', { row: i, column: j });
}
