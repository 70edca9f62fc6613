import type { WeightsRead } from '@fillwright/contract/weights';
import type { WeightsJudgement } from '@fillwright/engine/weights';
import {
  ACCEPT_WORDS,
  conclusionSentence,
  PURPOSE_WORDS,
  STRUCK_WORDS,
  weightsFaultSentence,
  weightsNoteSentence,
} from '@fillwright/words/en';
import { limitCardText } from '../design-text/limit-card-text.ts';
import { wrapped } from '../layout.ts';
import { histogramText } from './histogram-text.ts';
import { placesText } from './places-text.ts';
import { summaryText } from './summary-text.ts';
import { verdictsText } from './verdicts-text.ts';

/** Struck lines that are named; more are counted. */
const MOST_STRUCK = 30;

/**
 * All that the weights say, conclusion first.
 *
 * @param read - the lines as they came
 * @param judgement - what they say
 * @returns the text
 */
export function acceptText(read: WeightsRead, judgement: WeightsJudgement): string {
  const notes = judgement.notes.map((note) => wrapped('  - ', weightsNoteSentence(note)));
  const struck = struckText(read);
  return [
    `${wrapped('', conclusionSentence(judgement.conclusion))}\n${ACCEPT_WORDS.verdict(judgement.verdict, { purpose: PURPOSE_WORDS[judgement.purpose], isAsked: isAsked(judgement) })}`,
    summaryText(read, judgement),
    verdictsText(judgement),
    judgement.card ? limitCardText({ card: judgement.card }) : '',
    placesText(judgement),
    histogramText(judgement),
    struck.length > 0 ? [ACCEPT_WORDS.struck, ...struck].join('\n') : '',
    notes.length > 0 ? [ACCEPT_WORDS.notes, ...notes].join('\n') : '',
    wrapped('', ACCEPT_WORDS.caution),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

function isAsked({ limits, tests }: WeightsJudgement): boolean {
  return limits.length + tests.length > 0;
}

/**
 * The struck lines with their reason and what to do; blank lines are not named.
 *
 * @param read - the lines as they came
 * @returns one text for each
 */
export function struckText({ lines }: WeightsRead): string[] {
  const struck = lines.filter((line) => line.kind === 'struck').filter(({ reason }) => reason !== 'blank');
  const texts = struck.slice(0, MOST_STRUCK).map(({ line, raw, reason }) => {
    const { mark, todo } = STRUCK_WORDS[reason];
    return wrapped('  ', ACCEPT_WORDS.struckLine({ line, raw: shortened(raw), mark, todo }));
  });
  const more = struck.length - texts.length;
  return more > 0 ? [...texts, `  ${ACCEPT_WORDS.moreLines(more)}`] : texts;
}

/**
 * What is wrong with a text as a whole, with the lines that could not be read.
 *
 * @param path - the file
 * @param read - lines and faults
 * @returns one sentence a line
 */
export function weightsFaultsText(path: string, read: WeightsRead): string {
  return [...read.faults.map((fault) => `${path}: ${weightsFaultSentence(fault)}`), ...struckText(read)].join('\n');
}

function shortened(raw: string): string {
  const text = raw.trim().replace(/\s+/g, ' ');
  return text.length > 48 ? `${text.slice(0, 48)}...` : text;
}
