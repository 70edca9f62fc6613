import type {
  Conclusion,
  LimitReason,
  NoteCode,
  Purpose,
  StruckReason,
  TestReason,
  WeightsFault,
  WeightsNote,
  WeightTest,
} from '@fillwright/engine/weights';
import { plainNumber } from '#numbers';
import { adjusterName, TEST_WORDS } from './design.ts';

/** What stands beside a struck line, and what to do about it; nothing to do for what is no weight. */
export const STRUCK_WORDS: Readonly<Record<StruckReason, { readonly mark: string; readonly todo?: string }>> = {
  blank: { mark: 'blank' },
  heading: { mark: 'heading' },
  'total-or-mean': { mark: 'a total or mean' },
  'no-value': { mark: 'no value' },
  unstable: { mark: 'unstable', todo: 'weigh it again, or type the settled value without the mark' },
  'thousands-mark': {
    mark: 'may hold a thousands mark',
    todo: 'write it without: 1053.2, or 1.0532 with the unit g',
  },
  'two-values': { mark: 'two values', todo: 'one weight a line, or name the columns in the first line' },
  'unit-not-known': { mark: 'another unit', todo: 'write it in mg or g' },
  'not-positive': { mark: 'not above 0', todo: 'check the tare of the balance and weigh again' },
  'not-clear': { mark: 'cannot be read', todo: 'leave only the weight on the line' },
  'place-not-clear': { mark: 'place cannot be read', todo: 'group, column and the like are whole numbers from 1' },
};

/**
 * What is wrong with a text of weights as a whole.
 *
 * @param fault - code, line and facts
 * @returns one sentence that says what to do
 */
export function weightsFaultSentence({ code, line, value = '', facts = {} }: WeightsFault): string {
  const at = line === undefined ? '' : `Line ${line}: `;
  const fact = (name: string): string => String(facts[name] ?? '?');
  const sentences: Readonly<Record<WeightsFault['code'], string>> = {
    'no-weights': 'No weights were found: paste one weight a line, such as 527.9 or 527,9.',
    'unit-missing': 'No unit is written: say mg or g, or write it in the heading or beside the values.',
    'unit-not-known': `${at}the unit ${value} is not taken: write mg or g.`,
    'units-mixed': `${at}${fact('second')} stands in a column of ${fact('first')}: write all in one unit.`,
    'columns-not-clear': `${at}"${value}" holds more than one value: name the columns in the first line (gross, shell, group, column).`,
    'columns-twice': `${at}two columns are called ${value}: keep one of them.`,
    'gross-and-net': `${at}${fact('first')} and ${fact('second')} weights stand together: keep one of them.`,
    'too-many-lines': `The text has ${fact('found')} lines; up to ${fact('allowed')} are read.`,
    'not-a-revolution': `${fact('found')} weights are no full revolution: ${fact('groupCount')} groups of ${fact('columnCount')} columns make ${fact('needed')}. Mark missing capsules by columns named group and column.`,
    'all-equal': `${at}all ${fact('count')} values are ${fact('value_mg')} mg, and weights never are: check that the balance was read and not copied, and weigh again.`,
    'pair-incomplete': `${at}the ${fact('missing')} weight is missing: weigh it, or take the line out.`,
  };
  return sentences[code];
}

/** Names of the tests on weights, with their chapters. */
export const WEIGHT_TEST_NAMES: Readonly<Record<WeightTest, string>> = {
  ...TEST_WORDS,
  'supplement-mass': 'mass variation of supplements (USP <2091>)',
};

/** Why a test failed or gives no verdict. */
export const TEST_REASON_WORDS: Readonly<Record<TestReason, string>> = {
  'trial-data': 'data of a trial decide nothing about a lot',
  'test-not-in-dossier': 'the dossier does not name this test for this purpose',
  'several-loads': 'several loads in one capsule: their mass together proves nothing about any of them',
  'not-ten-contents': 'the test takes 10 capsules, and 20 more if they are called for',
  'not-twenty-further-contents': 'stage 2 takes 20 more capsules, 30 in all',
  'content-not-a-number': 'a content is not a number',
  'mean-not-positive': 'the mean net mass is not above 0',
  'further-units-needed': 'stage 1 is not passed: weigh the further capsules that the test names',
  'further-units-not-called-for': 'stage 1 is passed; the further capsules were not called for and do not count',
  'too-many-outside-inner-limits': 'too many units outside the inner limits',
  'outside-outer-limits': 'a unit outside the outer limits',
  'acceptance-value-above-limit': 'the acceptance value is above its limit',
  'unit-outside-limits': 'a unit is outside the limits of single units',
  'not-twenty-contents': 'the test takes exactly 20 capsules',
  'more-than-two-beyond-limit': 'more than 2 capsules differ from the mean by more than the limit',
  'beyond-twice-limit': 'a capsule differs from the mean by more than twice the limit',
  'not-twenty-gross': 'the test takes 20 capsules, and 40 more if they are called for',
  'not-twenty-shells': 'the 20 emptied shells belong to the test',
  'not-forty-further-capsules': 'the further step takes 40 capsules with their shells',
  'mass-not-a-number': 'a mass is not a number',
  'shells-needed': 'the gross step is not passed: empty the capsules and weigh their shells',
  'too-many-beyond-10-percent': 'too many capsules differ from the mean by more than 10 %',
  'beyond-25-percent': 'a capsule differs from the mean by more than 25 %',
  'net-not-known': 'no tare is known: weigh empty shells of the lot',
  'one-revolution': 'one revolution is no sample of the lot: every bore once, at one moment',
  'all-equal': 'all weights are equal: weigh again',
  'mean-tare-only': 'a mean tare was taken off; the test weighs the shell of each capsule',
  'weights-not-read': 'lines that may be weights could not be read',
  'content-not-known': 'the assay of the fill is not known',
  'needs-content-of-units': 'the test asks for the content of single capsules; weights do not tell it',
};

/** Why an in-process limit is not kept or cannot be told. */
export const LIMIT_REASON_WORDS: Readonly<Record<LimitReason, string>> = {
  'net-not-known': 'no tare is known: weigh empty shells of the lot',
  'outside-limits': 'outside',
  'count-not-of-plan': 'not the number of capsules of the plan',
  'too-few': 'too few capsules to tell',
  'all-equal': 'all weights are equal: weigh again',
  'tare-not-sure': 'closer to the limit than the tare is sure: weigh 50 shells',
};

/** What the weights may decide. */
export const PURPOSE_WORDS: Readonly<Record<Purpose, string>> = {
  trial: 'trial',
  'in-process': 'in-process check',
  release: 'release',
};

const mg = (value_mg: number): string => `${plainNumber(value_mg, { decimals: 1 })} mg`;
const whole = (value: number): string => plainNumber(value, { decimals: 0 });
const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? '' : 's'}`;

/**
 * The conclusion as one sentence.
 *
 * @param found - code and numbers
 * @returns one sentence
 */
export function conclusionSentence(found: Conclusion): string {
  const sentence = CONCLUSIONS[found.code] as (of: Conclusion) => string;
  return sentence(found);
}

const CONCLUSIONS: { readonly [code in Conclusion['code']]: (of: Extract<Conclusion, { code: code }>) => string } = {
  'no-limits': (found) =>
    `${counted(found.capsuleCount, 'capsule')} weigh ${mg(found.mean_mg)} on average; without target and limits there is nothing to decide.`,
  'not-enough-data': (found) =>
    found.only
      ? `One capsule, ${mg(found.only.net_mg)}${found.only.line === undefined ? '' : ` on line ${found.only.line}`}, says too little to act on: weigh at least ${found.neededCount}.`
      : `${counted(found.capsuleCount, 'capsule')} say too little to act on: weigh at least ${found.neededCount}.`,
  'all-equal': (found) =>
    `Weigh again: ${found.capsuleCount} capsules are all given as ${mg(found.mass_mg)}, and weights never are.`,
  'net-not-known': (found) =>
    `Weigh 50 empty shells of the lot: the gross mean is ${mg(found.mean_mg)}, and without a tare nothing is known of the fill.`,
  'leave-alone': (found) =>
    `Leave it alone: the mean of ${mg(found.mean_mg)} is inside its limits around ${mg(found.target_mg)}.`,
  'mean-cannot-be-told': (found) =>
    `Weigh more empty shells before anything is turned: the mean of ${mg(found.mean_mg)} is closer to its limit than the tare is sure (standard error ${plainNumber(found.tareStandardError_mg, { decimals: 2 })} mg).`,
  turn: (found) =>
    `Turn ${adjusterName(found.adjuster)} ${counted(found.stepCount, 'step')} ${found.direction} and nothing else: the mean of ${mg(found.mean_mg)} should come to ${mg(found.expected_mg)}.`,
  'mean-outside': (found) =>
    `The mean of ${mg(found.mean_mg)} is outside its limits, ${mg(Math.abs(found.off_mg))} ${found.off_mg < 0 ? 'under' : 'over'} target: one step of one pin by your design, then weigh again.`,
  'free-place': (found) => placeSentence(found),
  'stop-and-investigate': (found) =>
    found.why === 'test'
      ? `Stop and investigate: a test of the dossier is not passed.`
      : `Stop and investigate: ${counted(found.outsideCount, 'capsule')} outside the limits for single capsules.`,
  'weigh-more': (found) =>
    `Weigh ${found.neededCount} more capsules of the same sample: ${WEIGHT_TEST_NAMES[found.test]} calls for its next stage.`,
  'no-verdict': (found) => `No verdict on ${WEIGHT_TEST_NAMES[found.test]}: ${TEST_REASON_WORDS[found.reason]}.`,
  passes: (found) =>
    `Passes ${found.tests.map((test) => WEIGHT_TEST_NAMES[test]).join(' and ')}; the mean is ${mg(found.mean_mg)}.`,
};

function placeSentence(found: Extract<Conclusion, { code: 'free-place' }>): string {
  const where =
    found.kind === 'column'
      ? `column ${found.column ?? '?'}`
      : found.kind === 'group'
        ? `group ${found.group ?? '?'}`
        : `group ${found.group ?? '?'}, column ${found.column ?? '?'}`;
  const off = `${whole(Math.abs(found.effect_mg))} mg ${found.effect_mg < 0 ? 'light' : 'heavy'}`;
  const rest = `leave every other setting alone: the other ${found.restCount} weigh ${whole(found.restMean_mg)} mg on average`;
  return found.adjuster === undefined
    ? `Stop and look at ${where}, ${off}, jog one more revolution, and ${rest}.`
    : `Stop, free ${adjusterName(found.adjuster)} of ${where}, which seems stuck (${off}), jog one more revolution, and ${rest}.`;
}

/**
 * A note as one sentence.
 *
 * @param note - code and numbers
 * @returns one sentence
 */
export function weightsNoteSentence({ code, numbers }: WeightsNote): string {
  const of = (key: string, decimals = 0): string => plainNumber(numbers[key] ?? NaN, { decimals });
  const sentences: Readonly<Record<NoteCode, string>> = {
    'weights-not-read': `${of('unreadCount')} lines that may be weights could not be read: they are not in any figure.`,
    'outliers-flagged': `${of('outlierCount')} far from the others by the modified z-score: looked at, and in every figure.`,
    'shells-vary-more':
      'The capsules vary less than the shells alone: the spread of the fill cannot be told from these weights.',
    'few-shells': `The tare rests on ${of('shellCount')} shells (standard error ${of('tareStandardError_mg', 2)} mg): weigh ${of('askedCount')}.`,
    'tare-is-guess': 'The tare is a guess of trade custom: weigh 50 empty shells of the lot.',
    'few-for-capability': `${of('capsuleCount')} capsules give a capability with a wide interval; ${of('askedCount')} are usual.`,
    'gross-check-not-honest': `A shell blurs a single gross weight by ${of('blur_mg', 1)} mg of the ${of('half_mg', 1)} mg that the limit allows: gross weights hide capsules near the limit.`,
  };
  return sentences[code];
}

/** Names of the numbers of a test, by key. A key that is not here is not printed. */
export const TEST_NUMBER_WORDS: Readonly<Record<string, string>> = {
  capsuleCount: 'capsules',
  stageCount: 'stage',
  mean_mg: 'mean',
  meanNet_mg: 'mean net mass',
  meanGross_mg: 'mean gross mass',
  limit_pct: 'limit',
  low_mg: 'from',
  high_mg: 'to',
  lowTwice_mg: 'twice the limit, from',
  highTwice_mg: 'twice the limit, to',
  beyondLimitCount: 'beyond the limit (2 are allowed)',
  beyondTwiceCount: 'beyond twice the limit (none is allowed)',
  largestDeviation_pct: 'largest deviation',
  assay_pct: 'assay A',
  mean_pct: 'mean content',
  sd_pct: 'standard deviation s',
  reference_pct: 'reference value M',
  factor_ratio: 'factor k',
  acceptanceValue_pct: 'acceptance value AV',
  roundedAcceptanceValue_pct: 'AV rounded half-up',
  stage1AcceptanceValue_pct: 'AV of stage 1',
  lowestUnit_pct: 'lowest unit allowed at stage 2',
  highestUnit_pct: 'highest unit allowed at stage 2',
  grossBeyond10Count: 'beyond 10 % gross',
  beyond10Count: 'beyond 10 % net',
  beyond25Count: 'beyond 25 % net',
};

/**
 * The arithmetic of a test in one line, where it has one.
 *
 * @param numbers - of the test
 * @returns for example `AV = |M - mean| + k s = |98.50 - 97.20| + 2.4 x 1.90 = 5.9; limit 15.0`; nothing where it has none
 */
export function testArithmetic(numbers: Readonly<Record<string, number>>): string | undefined {
  const of = (key: string, decimals: number): string => plainNumber(numbers[key] ?? NaN, { decimals });
  if ('acceptanceValue_pct' in numbers)
    return `AV = |M - mean| + k s = |${of('reference_pct', 2)} - ${of('mean_pct', 2)}| + ${of('factor_ratio', 1)} x ${of('sd_pct', 2)} = ${of('acceptanceValue_pct', 2)}; limit ${of('limit_pct', 1)}`;
  if ('beyondLimitCount' in numbers)
    return `${of('mean_mg', 1)} mg x (1 +- ${plainNumber((numbers['limit_pct'] ?? NaN) / 100, { upToSignificantDigits: 3 })}) = ${of('low_mg', 1)} to ${of('high_mg', 1)} mg: ${of('beyondLimitCount', 0)} outside (at most 2); twice that ${of('lowTwice_mg', 1)} to ${of('highTwice_mg', 1)} mg: ${of('beyondTwiceCount', 0)} outside (none)`;
  if ('grossBeyond10Count' in numbers)
    return `gross ${of('meanGross_mg', 1)} mg +- 10 %: ${of('grossBeyond10Count', 0)} outside${'mean_mg' in numbers ? `; net ${of('mean_mg', 1)} mg: ${of('beyond10Count', 0)} beyond 10 %, ${of('beyond25Count', 0)} beyond 25 %` : ''}`;
  return undefined;
}
