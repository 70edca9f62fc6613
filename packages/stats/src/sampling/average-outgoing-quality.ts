import { requireWhole } from '#elementary';
import type { PlanInSeries } from './probability-of-acceptance.ts';
import { probabilityOfAcceptance } from './probability-of-acceptance.ts';

export interface SortedLots extends PlanInSeries {
  /** Units in a lot, at least n; left out: large against the sample. */
  readonly lotSize?: number;
}

/**
 * Average quality after inspection by a single plan, when lots not accepted are sorted and every unit found
 * nonconforming is replaced.
 *
 * @param plan - n, ac, quality, law, lot size
 * @returns nonconforming units, or nonconformities, per unit
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source MIL-STD-105E, 4.11 and Table V (from memory): Pa p (N - n) / N
 * @validity sorting finds everything; without it nothing improves
 */
export function averageOutgoingQuality({ lotSize, ...plan }: SortedLots): number {
  const passedOn = plan.quality * probabilityOfAcceptance(plan);
  if (lotSize === undefined) return passedOn;
  requireWhole({ lotSize }, { min: plan.n });
  return passedOn * ((lotSize - plan.n) / lotSize);
}
