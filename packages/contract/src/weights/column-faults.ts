import type { WeightsFault } from '@fillwright/engine/weights';
import type { RowRead } from './row-read.ts';

type Key = 'mass_mg' | 'shell_mg';

/** Two may be equal by the rounding of a balance; three and more that all are were hardly weighed. */
const LEAST_EQUAL = 3;

/**
 * What is wrong with the values of a column, though each of them can be read.
 *
 * @param rows - the lines as read
 * @param areShellsOwn - a second column is said to hold each capsule's own shell
 * @returns a fault for a column of equal values, and for the first capsule without its shell
 */
export function columnFaults(rows: readonly RowRead[], areShellsOwn: boolean): readonly WeightsFault[] {
  return [...equalIn(rows, 'mass_mg'), ...equalIn(rows, 'shell_mg'), ...(areShellsOwn ? shellsMissing(rows) : [])];
}

function equalIn(rows: readonly RowRead[], key: Key): readonly WeightsFault[] {
  const values = rows.flatMap(({ line, read }) => {
    const value_mg = read.kind === 'row' ? read[key] : undefined;
    return value_mg === undefined ? [] : [{ line, value_mg }];
  });
  const [first, second] = values;
  if (!first || !second || values.length < LEAST_EQUAL) return [];
  if (values.some(({ value_mg }) => value_mg !== first.value_mg)) return [];
  return [{ code: 'all-equal', line: second.line, facts: { value_mg: first.value_mg, count: values.length } }];
}

function shellsMissing(rows: readonly RowRead[]): readonly WeightsFault[] {
  for (const { line, read } of rows) {
    if (read.kind !== 'row' || (read.mass_mg === undefined) === (read.shell_mg === undefined)) continue;
    const missing = read.mass_mg === undefined ? 'gross' : 'shell';
    return [{ code: 'pair-incomplete', line, facts: { missing } }];
  }
  return [];
}
