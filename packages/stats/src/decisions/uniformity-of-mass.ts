import { requireWithin } from '#elementary';
import type { MassLimits } from './mass-limits.ts';
import { MASS_LIMITS, MASS_SAMPLE_SIZE, MOST_BEYOND_LIMIT } from './mass-limits.ts';

export interface ContentsOfTwenty {
  readonly contents: readonly number[];
  readonly limits?: MassLimits;
}

export type MassReason =
  | 'not-twenty-contents'
  | 'content-not-a-number'
  | 'mean-not-positive'
  | 'more-than-two-beyond-limit'
  | 'beyond-twice-limit';

export interface MassJudgement {
  readonly verdict: 'pass' | 'fail' | 'cannot-tell';
  readonly reasons: readonly MassReason[];
  /** Absent when the verdict is cannot-tell. */
  readonly numbers?: {
    readonly mean: number;
    readonly limit_pct: number;
    readonly beyondLimitCount: number;
    readonly beyondTwiceCount: number;
    readonly largestDeviation_pct: number;
  };
  readonly source: 'Ph. Eur. 2.9.5';
}

const SOURCE = 'Ph. Eur. 2.9.5';
/** A difference of two weighings carries rounding of the computer; a deviation this close above a limit is on it. */
const ROUNDING = 1 + 1e-12;

/**
 * Uniformity of mass of single-dose preparations: of 20 units at most 2 deviate from their mean by more than the limit,
 * none by more than twice the limit. The mean found decides which limit holds.
 *
 * @param sample - contents: the 20 masses, in the unit of the data; limits: default Ph. Eur. 2.9.5 for capsules, mg
 * @returns verdict with reasons and numbers; "cannot-tell" for another count, a value that is not finite, a mean not above 0
 * @throws StatsError "not-finite", "out-of-range" (a limit)
 * @source Ph. Eur. 2.9.5 (01/2008:20905), table 2.9.5.-1; "more than" is strict
 * @validity masses of the contents (gross mass less emptied shell)
 */
export function uniformityOfMass({ contents, limits = MASS_LIMITS }: ContentsOfTwenty): MassJudgement {
  const { classEdge, limitBelow_pct, limitFrom_pct } = limits;
  requireWithin({ classEdge, limitBelow_pct, limitFrom_pct }, { above: 0 });
  const mean = contents.reduce((sum, mass) => sum + mass, 0) / contents.length;
  const obstacle = obstacleOf(contents, mean);
  if (obstacle !== undefined) return { verdict: 'cannot-tell', reasons: [obstacle], source: SOURCE };
  const limit_pct = mean < classEdge ? limitBelow_pct : limitFrom_pct;
  const deviations = contents.map((mass) => 100 * Math.abs(mass - mean));
  const beyond = (times: number): number =>
    deviations.filter((deviation) => deviation > times * limit_pct * mean * ROUNDING).length;
  const beyondLimitCount = beyond(1);
  const beyondTwiceCount = beyond(2);
  const reasons: MassReason[] = [];
  if (beyondLimitCount > MOST_BEYOND_LIMIT) reasons.push('more-than-two-beyond-limit');
  if (beyondTwiceCount > 0) reasons.push('beyond-twice-limit');
  const largestDeviation_pct = Math.max(...deviations) / mean;
  return {
    verdict: reasons.length === 0 ? 'pass' : 'fail',
    reasons,
    numbers: { mean, limit_pct, beyondLimitCount, beyondTwiceCount, largestDeviation_pct },
    source: SOURCE,
  };
}

function obstacleOf(contents: readonly number[], mean: number): MassReason | undefined {
  if (contents.length !== MASS_SAMPLE_SIZE) return 'not-twenty-contents';
  if (!contents.every(Number.isFinite)) return 'content-not-a-number';
  return mean > 0 ? undefined : 'mean-not-positive';
}
