/** A table of plans: by letter (row from 0) and AQL (column from 0) the plan that is printed there, or the arrow. */
export type PlanTable<Plan> = (row: number, column: number) => Plan | 'up' | 'down';

/** A plan and the row in which it stands. */
export interface PlanFound<Plan> {
  readonly row: number;
  readonly plan: Plan;
}

export interface Place {
  readonly row: number;
  readonly column: number;
  /** Number of the last row of the table. */
  readonly lastRow: number;
}

/**
 * The plan at a place of a table, arrows followed: from row to row in the arrow's direction to the first plan; where the
 * table ends before one, the other way. The sample size is that of the row where the plan stands.
 *
 * @param table - the table
 * @param place - row and column asked for
 * @returns the plan and its row
 * @throws RangeError: a column without a plan, which no printed table has
 * @source ISO 2859-1:1999 Tables 2-A..2-C: "use the first sampling plan below (above) the arrow"
 */
export function planAt<Plan>(table: PlanTable<Plan>, { row, column, lastRow }: Place): PlanFound<Plan> {
  const here = table(row, column);
  if (here !== 'up' && here !== 'down') return { row, plan: here };
  const step = here === 'up' ? -1 : 1;
  for (const direction of [step, -step]) {
    for (let other = row + direction; other >= 0 && other <= lastRow; other += direction) {
      const plan = table(other, column);
      if (plan !== 'up' && plan !== 'down') return { row: other, plan };
    }
  }
  throw new RangeError('a column without a plan');
}
