import { StatsError } from '#elementary';
import type { Matrix } from './matrix.ts';

/**
 * Refuses rows that are no matrix of finite numbers.
 *
 * @param rows - the matrix
 * @returns nothing
 * @throws StatsError "sample-size" (no row or no column), "wrong-length" (row of another length than the first),
 *   "not-finite"; its numbers hold row and column, counted from 0
 * @source house rule: NaN never turns into a result
 */
export function requireMatrix(rows: Matrix): void {
  const columnCount = rows[0]?.length ?? 0;
  if (columnCount === 0) throw new StatsError('sample-size', { rowCount: rows.length, columnCount });
  for (const [row, values] of rows.entries()) {
    if (values.length !== columnCount)
      throw new StatsError('wrong-length', { row, length: values.length, columnCount });
    const column = values.findIndex((value) => !Number.isFinite(value));
    if (column >= 0) throw new StatsError('not-finite', { row, column, value: values[column] ?? NaN });
  }
}
