import type { StageArithmetic } from './acceptance-value-of-units.ts';
import { acceptanceValueOfUnits } from './acceptance-value-of-units.ts';
import type { Conduct, DossierTest, Judgement } from './conduct.ts';
import { underConduct } from './conduct.ts';
import type { DosageUnitLimits } from './dosage-unit-rules.ts';

/** Rules that the two ways of the test share. */
export interface DosageUnitRules {
  readonly target?: number;
  readonly limits?: DosageUnitLimits;
  /** Which acceptance value the dossier compares with L1: as computed, or rounded half-up to one decimal. */
  readonly rounding: 'unrounded' | 'halfUp';
  readonly conduct: Conduct;
}

/** Contents in % of claim: the 10 units of stage 1, and the 20 more of stage 2 once it is called for. */
export interface DosageUnitSample extends DosageUnitRules {
  readonly contents: readonly number[];
  readonly furtherContents?: readonly number[];
}

export type DosageUnitReason =
  | 'not-ten-contents'
  | 'not-twenty-further-contents'
  | 'content-not-a-number'
  | 'further-units-needed'
  | 'further-units-not-called-for'
  | 'acceptance-value-above-limit'
  | 'unit-outside-limits';

export interface DosageUnitNumbers {
  readonly stage1: StageArithmetic;
  /** All 30 units; absent unless stage 2 was called for and its units are there. */
  readonly stage2?: StageArithmetic;
  /** What either rounding says; the verdict follows the one that the dossier names. */
  readonly verdicts: Readonly<Record<DosageUnitRules['rounding'], 'pass' | 'fail' | 'cannot-tell'>>;
}

export type DosageUnitJudgement = Judgement<DosageUnitReason, DosageUnitNumbers>;

const SOURCE = 'Ph. Eur. 2.9.40, USP <905>, JP 6.02';
const OTHER_SIZES = 'Ph. Eur. 2.9.47 (samples of 100 and more), USP <1099>';

/**
 * Uniformity of dosage units by content: stage 1 passes with AV of 10 units up to L1; else 20 more are tested, and stage 2
 * passes with AV of all 30 up to L1 and every unit within (1 -+ 0.01 L2) M. Units of a stage 2 that was not called for are
 * not looked at.
 *
 * @param sample - contents: 10, furtherContents: 20 more, in % of claim; target: T, default 100; limits: default L1 15, L2 25;
 *   rounding: which acceptance value counts; conduct: purpose and route
 * @returns verdict, reasons, what follows, and the arithmetic of each stage; "cannot-tell" for another number of units, for a
 *   value that is not a number, when stage 2 is needed, and under the rules of conduct
 * @throws StatsError "not-finite", "out-of-range" (target, limits, loadCount)
 * @source Ph. Eur. 2.9.40, USP <905>, JP 6.02 (harmonised); other sample sizes are not in it: Ph. Eur. 2.9.47, USP <1099>
 * @validity each active substance is judged by itself
 */
export function uniformityOfDosageUnits(sample: DosageUnitSample): DosageUnitJudgement {
  const { contents, furtherContents } = sample;
  return judgedDosageUnits('dosage-units-by-content', sample, {
    contents,
    allContents: furtherContents && [...contents, ...furtherContents],
  });
}

/** Contents of the 10 of stage 1, and of all 30 as stage 2 sees them. */
export interface StageContents {
  readonly contents: readonly number[];
  readonly allContents?: readonly number[] | undefined;
}

/**
 * Both stages of the uniformity of dosage units, for either way of finding the contents.
 *
 * @param test - by content or by mass
 * @param rules - target, limits, rounding and conduct
 * @param units - contents of stage 1 and of stage 2
 * @returns the judgement
 * @throws StatsError "not-finite", "out-of-range" (target, limits, loadCount)
 * @source Ph. Eur. 2.9.40, USP <905>, JP 6.02 (harmonised)
 */
export function judgedDosageUnits(
  test: DossierTest,
  rules: DosageUnitRules,
  units: StageContents,
): DosageUnitJudgement {
  const { conduct, rounding } = rules;
  const obstacle = obstacleOf(units);
  if (obstacle !== undefined) return underConduct(test, conduct, withoutNumbers(obstacle));
  const { target = 100, limits } = rules;
  const given = { target, ...(limits && { limits }) };
  const stage1 = acceptanceValueOfUnits({ contents: units.contents, ...given });
  const all = units.allContents && acceptanceValueOfUnits({ contents: units.allContents, ...given });
  const by = { unrounded: outcome(stage1, all, 'unrounded'), halfUp: outcome(stage1, all, 'halfUp') };
  // What is neither of the two names is the stricter one.
  const decisive = rounding === 'halfUp' ? 'halfUp' : 'unrounded';
  const numbers: DosageUnitNumbers = {
    stage1,
    ...(all && !stage1.isWithinLimit[decisive] && { stage2: all }),
    verdicts: { unrounded: by.unrounded.verdict, halfUp: by.halfUp.verdict },
  };
  return underConduct(test, conduct, { ...by[decisive], numbers, source: SOURCE });
}

type Outcome = Pick<DosageUnitJudgement, 'verdict' | 'reasons' | 'next'>;

function outcome(
  stage1: StageArithmetic,
  all: StageArithmetic | undefined,
  rounding: DosageUnitRules['rounding'],
): Outcome {
  if (stage1.isWithinLimit[rounding])
    return { verdict: 'pass', reasons: all ? ['further-units-not-called-for'] : [], next: 'none' };
  if (!all) return { verdict: 'cannot-tell', reasons: ['further-units-needed'], next: 'test-further-units' };
  const reasons: DosageUnitReason[] = [];
  if (!all.isWithinLimit[rounding]) reasons.push('acceptance-value-above-limit');
  if (all.outside.length > 0) reasons.push('unit-outside-limits');
  return reasons.length === 0
    ? { verdict: 'pass', reasons, next: 'none' }
    : { verdict: 'fail', reasons, next: 'investigate' };
}

function withoutNumbers(reason: DosageUnitReason): DosageUnitJudgement {
  const isAboutSize = reason !== 'content-not-a-number';
  return {
    ...{ verdict: 'cannot-tell', reasons: [reason], next: 'none', source: SOURCE },
    ...(isAboutSize && { lookInto: OTHER_SIZES }),
  };
}

function obstacleOf({ contents, allContents }: StageContents): DosageUnitReason | undefined {
  if (contents.length !== 10) return 'not-ten-contents';
  if (allContents && allContents.length !== 30) return 'not-twenty-further-contents';
  return [...contents, ...(allContents ?? [])].every(Number.isFinite) ? undefined : 'content-not-a-number';
}
