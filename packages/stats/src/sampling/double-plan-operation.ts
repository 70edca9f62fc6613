import { requireWhole } from '#elementary';
import type { CountingLaw } from './counting-law.ts';
import { countChances } from './counting-law.ts';
import type { DoubleNumbers } from './double-plan.ts';

export interface DoublePlanInSeries extends DoubleNumbers {
  readonly n1: number;
  readonly n2: number;
  /** Nonconforming units, or nonconformities, per unit. */
  readonly quality: number;
  readonly law: CountingLaw;
  /** Units in a lot, at least n1 + n2; left out: large against the samples. */
  readonly lotSize?: number;
}

export interface DoublePlanOperation {
  readonly accepted: number;
  /** Probability that the first sample decides. */
  readonly decidedAtFirst: number;
  /** Mean number of units inspected per lot; each sample is inspected to its end. */
  readonly averageSampleCount: number;
  /** When lots not accepted are sorted and what is found is replaced; per unit. */
  readonly averageOutgoingQuality: number;
}

/**
 * Operating characteristic, average sample number and average outgoing quality of a double plan by attributes.
 *
 * @param plan - both samples, decision numbers, quality, law, lot size
 * @returns the probabilities and averages; a sum between ac2 and re2 counts as accepted
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source direct summation over the first sample; MIL-STD-105E, 4.11 (average outgoing quality, from memory)
 * @validity lots drawn from a process of constant quality
 */
export function doublePlanOperation(plan: DoublePlanInSeries): DoublePlanOperation {
  const { n1, n2, ac1, re1, ac2, re2, quality, law, lotSize } = plan;
  requireWhole({ ac1, ac2 }, { min: 0 });
  requireWhole({ re1 }, { min: ac1 + 1, max: 1e6 });
  requireWhole({ re2 }, { min: Math.max(ac2 + 1, re1) });
  const first = countChances({ n: n1, quality, law });
  const second = countChances({ n: n2, quality, law });
  const acceptedFirst = first.upTo(ac1);
  let [undecided, acceptedSecond] = [0, 0];
  for (let count = ac1 + 1; count < re1; count++) {
    const chance = first.exactly(count);
    undecided += chance;
    acceptedSecond += chance * second.upTo(re2 - 1 - count);
  }
  if (lotSize !== undefined) requireWhole({ lotSize }, { min: n1 + n2 });
  const left = (inspected: number): number => (lotSize === undefined ? 1 : (lotSize - inspected) / lotSize);
  return {
    accepted: acceptedFirst + acceptedSecond,
    decidedAtFirst: 1 - undecided,
    averageSampleCount: n1 + n2 * undecided,
    averageOutgoingQuality: quality * (acceptedFirst * left(n1) + acceptedSecond * left(n1 + n2)),
  };
}
