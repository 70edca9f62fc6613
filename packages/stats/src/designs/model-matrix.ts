import { type Matrix, requireMatrix } from '#numerics';
import type { Term } from './model-terms.ts';

/**
 * Matrix of a polynomial model: one row per run, one column per term.
 *
 * @param design - rows: levels of the factors; terms
 * @returns n x p matrix
 * @throws StatsError "sample-size", "wrong-length", "not-finite"; its numbers hold row and column, counted from 0
 * @source definition
 */
export function modelMatrix(design: { readonly rows: Matrix; readonly terms: readonly Term[] }): Matrix {
  const { rows, terms } = design;
  requireMatrix(rows);
  return rows.map((levels) => terms.map(({ factors }) => factors.reduce((product, k) => product * levels[k]!, 1)));
}
