import { requireWhole } from '#elementary';
import type { SampleOfSeries } from './counting-law.ts';
import { countChances } from './counting-law.ts';

export interface PlanInSeries extends SampleOfSeries {
  readonly ac: number;
}

/**
 * Operating characteristic of a single plan by attributes: probability to accept a lot of a series of this quality.
 *
 * @param plan - n, ac, quality, law
 * @returns probability, 0 to 1
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source ISO 2859-1:1999, 12 (type B curves); definition of the laws
 * @validity lots drawn from a process of constant quality; one lot of known size is hypergeometric
 */
export function probabilityOfAcceptance({ ac, ...sample }: PlanInSeries): number {
  requireWhole({ ac }, { min: 0 });
  return countChances(sample).upTo(ac);
}
