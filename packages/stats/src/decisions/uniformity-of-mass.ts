import { requireWithin } from '#elementary';
import type { Conduct, Judgement } from './conduct.ts';
import { underConduct } from './conduct.ts';
import { ROUNDING } from './dosage-unit-rules.ts';
import type { MassLimits } from './mass-limits.ts';
import { MASS_LIMITS, MASS_SAMPLE_SIZE, MOST_BEYOND_LIMIT } from './mass-limits.ts';
import { massDeviations } from './mass-deviations.ts';

export interface ContentsOfTwenty {
  readonly contents: readonly number[];
  readonly limits?: MassLimits;
  readonly conduct: Conduct;
}

export type MassReason =
  | 'not-twenty-contents'
  | 'content-not-a-number'
  | 'mean-not-positive'
  | 'more-than-two-beyond-limit'
  | 'beyond-twice-limit';

export interface MassNumbers {
  readonly mean: number;
  readonly limit_pct: number;
  /** Units beyond the limit and beyond twice it, numbered from 1. */
  readonly beyondLimit: readonly number[];
  readonly beyondTwice: readonly number[];
  readonly beyondLimitCount: number;
  readonly beyondTwiceCount: number;
  readonly largestDeviation_pct: number;
}

export type MassJudgement = Judgement<MassReason, MassNumbers>;

const SOURCE = 'Ph. Eur. 2.9.5';

/**
 * Uniformity of mass of single-dose preparations: of 20 units at most 2 deviate from their mean by more than the limit,
 * none by more than twice the limit. The mean found decides which limit holds.
 *
 * @param sample - contents: the 20 masses, in the unit of the data; limits: default Ph. Eur. 2.9.5 for capsules, mg; conduct:
 *   purpose and route
 * @returns verdict with reasons, what follows and numbers; "cannot-tell" for another count, a value that is not finite, a mean
 *   not above 0, and under the rules of conduct
 * @throws StatsError "not-finite", "out-of-range" (a limit, loadCount)
 * @source Ph. Eur. 2.9.5 (01/2008:20905), table 2.9.5.-1; "more than" is strict
 * @validity masses of the contents (gross mass less emptied shell); one load per capsule
 */
export function uniformityOfMass({ contents, limits = MASS_LIMITS, conduct }: ContentsOfTwenty): MassJudgement {
  const { classEdge, limitBelow_pct, limitFrom_pct } = limits;
  requireWithin({ classEdge, limitBelow_pct, limitFrom_pct }, { above: 0 });
  return underConduct('uniformity-of-mass', conduct, judged(contents, limits));
}

function judged(contents: readonly number[], limits: MassLimits): MassJudgement {
  const obstacle = contents.length === MASS_SAMPLE_SIZE ? undefined : 'not-twenty-contents';
  if (obstacle !== undefined) return cannotTell(obstacle);
  if (!contents.every(Number.isFinite)) return cannotTell('content-not-a-number');
  const { mean, largestDeviation_pct, beyond } = massDeviations(contents);
  if (!(mean > 0)) return cannotTell('mean-not-positive');
  const isLight = mean < limits.classEdge * (1 - ROUNDING);
  const limit_pct = isLight ? limits.limitBelow_pct : limits.limitFrom_pct;
  const [beyondLimit, beyondTwice] = [beyond(limit_pct), beyond(2 * limit_pct)];
  const counts = { beyondLimitCount: beyondLimit.length, beyondTwiceCount: beyondTwice.length };
  const reasons: MassReason[] = [];
  if (counts.beyondLimitCount > MOST_BEYOND_LIMIT) reasons.push('more-than-two-beyond-limit');
  if (counts.beyondTwiceCount > 0) reasons.push('beyond-twice-limit');
  const isPass = reasons.length === 0;
  return {
    ...{ verdict: isPass ? 'pass' : 'fail', reasons, next: isPass ? 'none' : 'investigate', source: SOURCE },
    numbers: { mean, limit_pct, beyondLimit, beyondTwice, ...counts, largestDeviation_pct },
  };
}

function cannotTell(reason: MassReason): MassJudgement {
  return { verdict: 'cannot-tell', reasons: [reason], next: 'none', source: SOURCE };
}
