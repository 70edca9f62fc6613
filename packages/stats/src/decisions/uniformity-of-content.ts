import type { Conduct, Judgement } from './conduct.ts';
import { underConduct } from './conduct.ts';
import { ROUNDING } from './dosage-unit-rules.ts';
import { sampleMoments } from './sample-moments.ts';

/** Contents of 10 units, and of 20 more once they are called for, all in one unit. */
export interface ContentSample {
  readonly contents: readonly number[];
  readonly furtherContents?: readonly number[];
  readonly conduct: Conduct;
}

export type ContentReason =
  | 'not-ten-contents'
  | 'not-twenty-further-contents'
  | 'content-not-a-number'
  | 'mean-not-positive'
  | 'further-units-needed'
  | 'further-units-not-called-for'
  | 'too-many-outside-inner-limits'
  | 'outside-outer-limits';

/** Units outside 85 to 115 % and outside 75 to 125 % of the mean, numbered from 1. */
export interface ContentStage {
  readonly n: number;
  readonly mean: number;
  readonly outsideInner: readonly number[];
  readonly outsideOuter: readonly number[];
}
export interface ContentNumbers {
  readonly stage1: ContentStage;
  readonly stage2?: ContentStage;
}
export type ContentJudgement = Judgement<ContentReason, ContentNumbers>;

const SOURCE = 'Ph. Eur. 2.9.6, test B (from memory)';
const TEXT = 'Ph. Eur. 2.9.6, test B, in force: limits and counts here are from memory';
const INNER = 0.15;
const OUTER = 0.25;
const MOST_OF_TEN = 1;
const MOST_OF_TEN_FOR_STAGE_2 = 3;
const MOST_OF_THIRTY = 3;

/**
 * Uniformity of content of single-dose capsules (test B): of 10 units at most one outside 85 to 115 % of their mean and none
 * outside 75 to 125 %; with two or three outside the inner limits 20 more, then at most 3 of 30, none outside the outer ones.
 *
 * @param sample - contents: 10, furtherContents: 20 more, in one unit, from 0; conduct: purpose and route
 * @returns verdict, reasons, what follows, mean and units outside at each stage
 * @throws StatsError "not-finite", "out-of-range" (loadCount)
 * @source Ph. Eur. 2.9.6, test B, from memory: read the text in force before use
 * @validity limits relate to the mean of the units tested (10, then 30); where 2.9.40 is not the dossier's test, this goes
 *   together with the uniformity of mass
 */
export function uniformityOfContent({ contents, furtherContents, conduct }: ContentSample): ContentJudgement {
  const judged = judgedByNumbers(contents, furtherContents);
  return underConduct('uniformity-of-content', conduct, { ...judged, source: SOURCE, lookInto: TEXT });
}

type Judged = Omit<ContentJudgement, 'source' | 'lookInto'>;

function judgedByNumbers(contents: readonly number[], further: readonly number[] | undefined): Judged {
  const obstacle = obstacleOf(contents, further);
  if (obstacle !== undefined) return { verdict: 'cannot-tell', reasons: [obstacle], next: 'none' };
  const stage1 = stageOf(contents);
  const failures = failuresOf(stage1, MOST_OF_TEN_FOR_STAGE_2);
  if (failures.length > 0) return { verdict: 'fail', reasons: failures, next: 'investigate', numbers: { stage1 } };
  if (stage1.outsideInner.length <= MOST_OF_TEN) {
    const reasons: ContentReason[] = further ? ['further-units-not-called-for'] : [];
    return { verdict: 'pass', reasons, next: 'none', numbers: { stage1 } };
  }
  if (further) return secondStage(stage1, stageOf([...contents, ...further]));
  return {
    ...{ verdict: 'cannot-tell', reasons: ['further-units-needed'] },
    ...{ next: 'test-further-units', numbers: { stage1 } },
  };
}

function secondStage(stage1: ContentStage, stage2: ContentStage): Judged {
  const reasons = failuresOf(stage2, MOST_OF_THIRTY);
  const isPass = reasons.length === 0;
  return {
    ...{ verdict: isPass ? 'pass' : 'fail', reasons, next: isPass ? 'none' : 'investigate' },
    numbers: { stage1, stage2 },
  };
}

function failuresOf({ outsideInner, outsideOuter }: ContentStage, most: number): ContentReason[] {
  const reasons: ContentReason[] = [];
  if (outsideInner.length > most) reasons.push('too-many-outside-inner-limits');
  if (outsideOuter.length > 0) reasons.push('outside-outer-limits');
  return reasons;
}

function stageOf(contents: readonly number[]): ContentStage {
  const { mean } = sampleMoments(contents);
  const beyond = (share: number): number[] =>
    contents.flatMap((content, i) => (Math.abs(content - mean) > (share + ROUNDING) * mean ? [i + 1] : []));
  return { n: contents.length, mean, outsideInner: beyond(INNER), outsideOuter: beyond(OUTER) };
}

function obstacleOf(contents: readonly number[], further: readonly number[] | undefined): ContentReason | undefined {
  if (contents.length !== 10) return 'not-ten-contents';
  if (further && further.length !== 20) return 'not-twenty-further-contents';
  if (![...contents, ...(further ?? [])].every(Number.isFinite)) return 'content-not-a-number';
  return sampleMoments(contents).mean > 0 ? undefined : 'mean-not-positive';
}
