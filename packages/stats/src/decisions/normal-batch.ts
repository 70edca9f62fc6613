import type { ReferenceZone } from './dosage-unit-rules.ts';
import type { MeanLaw } from './mean-nodes.kernel.ts';

/** Normal contents of a batch, in % of claim: sd of a unit above 0, sd of what all units have in common from 0. */
export interface NormalBatch {
  readonly mean: number;
  readonly sd: number;
  readonly biasSd: number;
  readonly zone: ReferenceZone;
}

/**
 * Law of the mean of n units. The rest of the integrand changes over the standard deviation it has when nothing is in common.
 *
 * @param batch - spread of a unit, and of what all units have in common
 * @param n - number of units
 * @param rule - reach and fineness of the nodes
 * @returns the law, % of claim
 * @throws nothing
 * @source variance of a mean of independent values
 */
export function lawOfMean({ mean, sd, biasSd }: NormalBatch, n: 10 | 30, { reach, fineness }: NodeRule): MeanLaw {
  const square = (sd * sd) / n;
  return { mean, sd: Math.sqrt(square + biasSd * biasSd), grain: Math.sqrt(square), reach, fineness };
}

type NodeRule = Pick<MeanLaw, 'reach' | 'fineness'>;
