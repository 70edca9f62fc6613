import type { TestVerdict } from '@fillwright/engine/weights';
import { TEST_REASON_WORDS, testArithmetic, WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import { plainNumber } from '@fillwright/words/numbers';
import { said, type Said } from '../numbers/said.ts';
import { testNumber } from '../numbers/test-number.ts';
import type { Weighed } from '../numbers/weighed.ts';
import { asSentence } from './as-sentence.ts';
import type { VerdictRow } from './verdict-row.ts';
import { whoLines } from './who-lines.ts';

const words = WEIGHTS_VERDICT_WORDS;
/** The terminal writes these in plain signs. */
const SIGNS = [
  [' +- ', ' ± '],
  ['+- ', '± '],
  [' x ', ' × '],
  [' - ', ' − '],
] as const;

/**
 * The tests that the dossier names, each with its arithmetic.
 *
 * @param weighed - masses and judgement
 * @returns a row for each
 */
export function testRows(weighed: Weighed): readonly VerdictRow[] {
  return weighed.judgement.tests.map((verdict) => testRow(weighed, verdict));
}

function testRow(weighed: Weighed, found: TestVerdict): VerdictRow {
  const { test, substance = '', verdict, reasons, outside, wouldBe, lookInto, source } = found;
  const applies = !reasons.includes('one-revolution');
  return {
    ...{ key: `${test} ${substance}`, isAct: verdict === 'fail' },
    badge: applies ? words.verdicts[verdict] : words.doesNotApply,
    title: [words.testOf({ test: words.tests[test], substance: applies ? substance : '' })],
    lines: [
      ...sumLines(weighed, found),
      ...whoLines(weighed, outside),
      ...reasons.map((reason): Said => [asSentence(TEST_REASON_WORDS[reason])]),
      ...(wouldBe === undefined ? [] : [[words.would(words.verdicts[wouldBe])]]),
      ...(lookInto === undefined ? [] : [[words.lookInto(lookInto)]]),
    ],
    ...(applies ? { source } : {}),
  };
}

/** The arithmetic; the number that the test turns on opens. */
function sumLines(weighed: Weighed, found: TestVerdict): readonly Said[] {
  const written = testArithmetic(found.numbers);
  if (written === undefined) return [];
  const sum = SIGNS.reduce((text, [plain, sign]) => text.replaceAll(plain, sign), written);
  const number = testNumber(weighed, found);
  if (number?.value === undefined) return [[`${sum}.`]];
  const isValue = 'acceptanceValue_pct' in found.numbers;
  const text = isValue
    ? plainNumber(number.value, { decimals: 2 })
    : `${plainNumber(number.value, { decimals: 1 })}\u202F%`;
  return [[`${sum}.`], said(isValue ? words.acceptance : words.largest, { value: [text, number] })];
}
