import { accurateDot } from './accurate-dot.ts';
import type { Matrix } from './matrix.ts';
import type { PivotedQr } from './pivoted-qr.ts';
import { reflected } from './reflected.ts';
import { solvedTriangle } from './solved-triangle.ts';

/** The system r + A x = b, A' r = c, where A holds the independent columns of X, scaled, in the order taken. */
export interface AugmentedSystem {
  readonly qr: PivotedQr;
  /** Rows of A. */
  readonly rows: Matrix;
  /** Columns of A. */
  readonly columns: Matrix;
  /** Right side, one value per row; nothing: 0. */
  readonly values?: readonly number[];
  /** Right side, one value per column; nothing: 0. */
  readonly moments?: readonly number[];
  /** Default 12; 1: not refined. */
  readonly mostRounds?: number;
}

const MOST_ROUNDS = 12;

/**
 * Solves the augmented system of least squares with iterative refinement: what is left over is computed in twice the
 * precision, so that the solution is right to nearly all digits of the given doubles even where the columns are nearly
 * dependent.
 *
 * @param system - decomposition, scaled matrix, right sides
 * @returns solution x, and remainder r
 * @throws nothing
 * @source Å. Björck (1967), "Iterative refinement of linear least squares solutions I", BIT 7, 257-278 (from memory)
 * @validity condition number of the scaled columns below about 1e15
 */
export function refinedSolution(system: AugmentedSystem): { solution: Float64Array; remainder: Float64Array } {
  const { qr, rows, columns, values, moments, mostRounds = MOST_ROUNDS } = system;
  const solution = new Float64Array(qr.rank);
  const remainder = new Float64Array(qr.rowCount);
  let last = Infinity;
  for (let round = 0; round < mostRounds; round++) {
    const negative = solution.map((x) => -x);
    const left = rows.map((row, i) =>
      accurateDot({ left: row, right: negative, plus: [values?.[i] ?? 0, -remainder[i]!] }),
    );
    const opposite = remainder.map((r) => -r);
    const leftMoments = columns.map((column, j) =>
      accurateDot({ left: column, right: opposite, plus: [moments?.[j] ?? 0] }),
    );
    const step = plainSolution(qr, left, leftMoments);
    const size = largest(step.solution);
    // A correction that no longer shrinks is rounding.
    if (round > 0 && size > 0.5 * last) break;
    for (let j = 0; j < solution.length; j++) solution[j] = solution[j]! + step.solution[j]!;
    for (let i = 0; i < remainder.length; i++) remainder[i] = remainder[i]! + step.remainder[i]!;
    if (size === 0) break;
    last = size;
  }
  return { solution, remainder };
}

function plainSolution(qr: PivotedQr, values: readonly number[], moments: readonly number[]) {
  const turned = reflected(qr, values, 'there');
  const upper = solvedTriangle(qr, moments, 'lower');
  const difference = upper.map((value, k) => turned[k]! - value);
  turned.set(upper);
  return { solution: solvedTriangle(qr, difference, 'upper'), remainder: reflected(qr, turned, 'back') };
}

function largest(values: Float64Array): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}
