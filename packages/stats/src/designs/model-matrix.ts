import { StatsError } from '#elementary';
import type { Matrix } from '#numerics';
import type { Term } from './model-terms.ts';

/**
 * Matrix of a polynomial model: one row per run, one column per term.
 *
 * @param design - rows: levels of the factors; terms
 * @returns n x p matrix
 * @throws StatsError "not-finite" (a level; run and factor, from 0)
 * @source definition
 */
export function modelMatrix(design: { readonly rows: Matrix; readonly terms: readonly Term[] }): Matrix {
  const { rows, terms } = design;
  return rows.map((levels, run) => {
    const factor = levels.findIndex((level) => !Number.isFinite(level));
    if (factor >= 0) throw new StatsError('not-finite', { run, factor, level: levels[factor] ?? NaN });
    return terms.map(({ factors }) => factors.reduce((product, k) => product * levels[k]!, 1));
  });
}
