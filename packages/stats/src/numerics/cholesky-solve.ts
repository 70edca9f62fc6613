import { StatsError } from '#elementary';
import type { CholeskyDecomposition } from './cholesky-decomposition.ts';

/** The parts of A x = b with A = L L'. */
export interface CholeskySystem {
  readonly decomposition: CholeskyDecomposition;
  /** b, one value per row of A. */
  readonly values: readonly number[];
}

/**
 * Solves A x = b from the Cholesky decomposition of A.
 *
 * @param system - decomposition and right side
 * @returns x
 * @throws StatsError "wrong-length"
 * @source forward and back substitution
 */
export function choleskySolve({ decomposition: { lower }, values }: CholeskySystem): number[] {
  const n = lower.length;
  if (values.length !== n) throw new StatsError('wrong-length', { rowCount: n, valueCount: values.length });
  const x = [...values];
  for (let i = 0; i < n; i++) {
    let value = x[i]!;
    for (let k = 0; k < i; k++) value -= lower[i]![k]! * x[k]!;
    x[i] = value / lower[i]![i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    let value = x[i]!;
    for (let k = i + 1; k < n; k++) value -= lower[k]![i]! * x[k]!;
    x[i] = value / lower[i]![i]!;
  }
  return x;
}
