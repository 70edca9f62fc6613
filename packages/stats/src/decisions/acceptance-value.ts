import { requireWhole, requireWithin, StatsError } from '#elementary';
import { FACTORS, referenceZone } from './dosage-unit-rules.ts';

/** Mean and standard deviation of the contents of n units, in % of claim. */
export interface AcceptanceValueInput {
  readonly mean: number;
  readonly sd: number;
  readonly n: number;
  readonly target?: number;
}

export interface AcceptanceValue {
  readonly reference: number;
  readonly acceptanceValue: number;
  readonly referenceCase: 'below' | 'inside' | 'above';
}

/**
 * Acceptance value of the uniformity of dosage units: AV = |M - mean| + k sd, not rounded.
 *
 * M is the mean itself from 98.5 to 101.5 (to T for a target above 101.5), else the nearer edge. k = 2.4 for 10 units, 2.0
 * for 30.
 *
 * @param input - mean, sd (n - 1 form, from 0) in % of claim; n: 10 or 30; target: T in % of claim, above 0, default 100
 * @returns reference value M, acceptance value, and where the mean lies against the reference zone
 * @throws StatsError "not-finite", "out-of-range", "not-whole"; "sample-size" (n is neither 10 nor 30)
 * @source Ph. Eur. 2.9.40, table 2.9.40.-2; USP <905>, table 2
 * @validity the tests of the harmonised text; rounding to the places of the limit (USP General Notices 7.20) is left to
 *   the caller
 * @example acceptanceValue({ mean: 105.9, sd: 5, n: 10 }).acceptanceValue // 16.4
 */
export function acceptanceValue({ mean, sd, n, target = 100 }: AcceptanceValueInput): AcceptanceValue {
  requireWithin({ mean });
  requireWithin({ sd }, { min: 0 });
  requireWithin({ target }, { above: 0 });
  requireWhole({ n });
  const factor = FACTORS[n];
  if (factor === undefined) throw new StatsError('sample-size', { n });
  const { low, high } = referenceZone(target);
  const reference = Math.min(Math.max(mean, low), high);
  const referenceCase = mean < low ? 'below' : mean > high ? 'above' : 'inside';
  return { reference, acceptanceValue: Math.abs(reference - mean) + factor * sd, referenceCase };
}
