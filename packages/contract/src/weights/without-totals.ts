import type { RowRead } from './row-read.ts';

type Key = 'mass_mg' | 'shell_mg';

/** Two values and their sum are the shortest column with a total. */
const LEAST_COUNT = 2;
/** A sheet adds what it holds and shows what it rounds: half a tenth of a milligram for each value. */
const ROUNDING_mg = 0.05;

/**
 * Strikes totals that stand in a column of weights without saying so: a value that is the sum of all above it, and a mean right
 * below such a sum.
 *
 * @param rows - the lines as read
 * @returns the lines, such totals struck
 */
export function withoutTotals(rows: readonly RowRead[]): readonly RowRead[] {
  const totals = new Set([...totalsOf(rows, 'mass_mg'), ...totalsOf(rows, 'shell_mg')]);
  if (totals.size === 0) return rows;
  return rows.map((row) =>
    totals.has(row.line)
      ? { ...row, read: { kind: 'struck', reason: 'total-or-mean', value: row.raw.trim(), mayBeWeight: false } }
      : row,
  );
}

function totalsOf(rows: readonly RowRead[], key: Key): readonly RowRead['line'][] {
  const totals: RowRead['line'][] = [];
  let [sum_mg, count, isAfterTotal] = [0, 0, false];
  for (const { line, read } of rows) {
    const value_mg = read.kind === 'row' ? read[key] : undefined;
    if (value_mg === undefined) continue;
    const slack_mg = ROUNDING_mg * (count + 1);
    const isTotal = count >= LEAST_COUNT && Math.abs(value_mg - sum_mg) <= slack_mg;
    const isMean = isAfterTotal && Math.abs(value_mg - sum_mg / count) <= 2 * ROUNDING_mg;
    if (isTotal || isMean) totals.push(line);
    isAfterTotal = isTotal;
    if (isTotal || isMean) continue;
    sum_mg += value_mg;
    count += 1;
  }
  return totals;
}
