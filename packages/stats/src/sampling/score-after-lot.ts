import { AQLS, LETTERS } from './inspection-tables.ts';
import type { LotSeen } from './series-state.ts';
import type { SinglePlan } from './single-plan.ts';
import { singlePlans } from './single-plans.ts';

/** A lot on normal inspection, its plan and the AQL, and the score before it. */
export interface LotToScore {
  readonly plan: SinglePlan;
  readonly aql: string;
  readonly lot: LotSeen;
  readonly score: number;
}

const LAST_SMALL_ACCEPTANCE_NUMBER = 1;

/**
 * Switching score after a lot on normal inspection, single plans: Ac 0 or 1: 2 more when accepted; Ac from 2: 3 more when
 * it would be accepted at the next smaller AQL too; otherwise back to 0.
 *
 * @param scored - plan, AQL, lot, score before
 * @returns score after
 * @throws nothing
 * @source ISO 2859-1:1999, 9.3.3.2 (secondary)
 * @validity where an arrow moved the plan, the next smaller AQL is read in the row of the sample that was drawn
 */
export function scoreAfterLot({ plan, aql, lot, score }: LotToScore): number {
  if (plan.ac <= LAST_SMALL_ACCEPTANCE_NUMBER) return lot.accepted ? score + 2 : 0;
  const table = singlePlans({ inspection: 'normal', scheme: 'ISO 2859-1' });
  const stricter = table(LETTERS.indexOf(plan.planLetter), AQLS.indexOf(aql) - 1);
  if (stricter === 'up' || stricter === 'down') return 0;
  return lot.nonconformingCount <= stricter.ac ? score + 3 : 0;
}
