import { requireWhole, requireWithin } from '#elementary';

export interface ValuesAgainstLimit {
  /** Measured values, in the unit of the data. */
  readonly values: readonly number[];
  /** Sample size and acceptability constant of the plan. */
  readonly n: number;
  readonly k: number;
  /** The one specification limit, in the unit of the data. */
  readonly limit: number;
  readonly side: 'upper' | 'lower';
  /** Standard deviation of the process where it is known (then k is that of the known-sd plan). */
  readonly knownSd?: number;
}

export type VariablesReason = 'not-the-sample-size' | 'value-not-a-number' | 'no-spread' | 'quality-index-below-k';

export interface VariablesJudgement {
  readonly verdict: 'pass' | 'fail' | 'cannot-tell';
  readonly reasons: readonly VariablesReason[];
  /** Absent when the verdict is cannot-tell. */
  readonly numbers?: {
    readonly mean: number;
    readonly sd: number;
    /** (limit - mean) / sd towards the limit: accepted from k. */
    readonly qualityIndex: number;
  };
  readonly source: 'k method, ISO 3951-1, MIL-STD-414';
}

const SOURCE = 'k method, ISO 3951-1, MIL-STD-414';

/**
 * Judges a sample by the k method: accepted when the mean lies at least k standard deviations inside the limit.
 *
 * @param sample - values, plan, limit
 * @returns verdict with reasons and numbers; "cannot-tell" for another count than n, a value that is not finite, values
 *   all equal when the sd is not known
 * @throws StatsError "not-finite", "not-whole", "out-of-range" (plan, limit, known sd)
 * @source MIL-STD-414 (1957), section B part I, Form 1 (secondary)
 * @validity normal values, one specification limit; for two limits the tables of ISO 3951 or a tolerance interval
 */
export function variablesVerdict(sample: ValuesAgainstLimit): VariablesJudgement {
  const { values, n, k, limit, side, knownSd } = sample;
  requireWhole({ n }, { min: knownSd === undefined ? 2 : 1 });
  requireWithin({ k, limit });
  if (knownSd !== undefined) requireWithin({ knownSd }, { above: 0 });
  if (values.length !== n) return cannotTell('not-the-sample-size');
  if (!values.every(Number.isFinite)) return cannotTell('value-not-a-number');
  const mean = values.reduce((sum, value) => sum + value / n, 0);
  const sd = knownSd ?? Math.sqrt(values.reduce((sum, value) => sum + (value - mean) * (value - mean), 0) / (n - 1));
  if (values.every((value) => value === values[0]) && knownSd === undefined) return cannotTell('no-spread');
  const qualityIndex = (side === 'upper' ? limit - mean : mean - limit) / sd;
  if (!Number.isFinite(qualityIndex)) return cannotTell('no-spread');
  const numbers = { mean, sd, qualityIndex };
  return qualityIndex >= k
    ? { verdict: 'pass', reasons: [], numbers, source: SOURCE }
    : { verdict: 'fail', reasons: ['quality-index-below-k'], numbers, source: SOURCE };
}

function cannotTell(reason: VariablesReason): VariablesJudgement {
  return { verdict: 'cannot-tell', reasons: [reason], source: SOURCE };
}
