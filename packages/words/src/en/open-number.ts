import { plainNumber } from '#numbers';
import { HALVED_BY_WORDS } from './design.ts';

/** Causes of the spread between capsules. */
export const CAUSE_WORDS: Readonly<Record<string, string>> = {
  stroke: 'feed density, common to a stroke',
  'between-bore': 'between bores',
  'pin-length': 'pin length',
  transfer: 'transfer',
  rest: 'rest',
  'bed-level': 'bed level',
};

/** What stands after value and unit of a number that is open. */
const TITLES = {
  mass: (station: number): string => `after station ${station}`,
  reached: (station: number): string => `is the depth pin ${station} reaches`,
  force: (station: number): string => `on pin ${station}`,
  pressure: (station: number): string => `under pin ${station}`,
  gain: (station: number): string => `deeper with pin ${station}`,
  scale: (station: number, reading_division: number): string =>
    `below the disc face: pin ${station} at ${plainNumber(reading_division, { decimals: 1 })} on its scale`,
  stationDensity: (station: number): string => `under pin ${station}, on average, before the refill`,
  springback: 'is what springback adds to the slug',
  slugLength: 'long, once released',
  slugWidth: 'wide, once released',
  density: 'in the slug, on average',
  dead: 'empty under the slug',
  deadVolume: 'left empty under the slug',
  axis: 'free over the middle of the slug',
  proud: 'that a slug may stand above the rim',
  longest: 'is the longest slug that stays whole',
  free: 'free between slug and dome',
  rim: 'of the slug above the rim of the body',
  largest: (size: string): string => `is the heaviest slug that stays whole in size ${size}`,
  part: ({ slot, number }: { slot: string; number: string }): string => `with ${slot} ${number}, at the same depths`,
  first: ({ kind, end }: { kind: 'net' | 'gross'; end: 'low' | 'high' }): string =>
    `${kind} is the ${end === 'low' ? 'least' : 'most'} that the mean of the first weights should be`,
  halfWidth: 'either way is how far the forecast may be off, 9 times in 10',
  narrowed: (how: string): string => `either way would be left: ${how}`,
  loose: (station: number): string => `of loose powder that pin ${station} leaves on the slug`,
  outsideMeans: 'of sample means outside, after set-up',
  outsideCapsules: 'of single capsules outside, after set-up',
  setUp: 'is what the set-up leaves, one standard deviation',
  spread: 'between capsules, one standard deviation',
  pass: (test: string): string => `is the probability of passing ${test}`,
  acceptance: (test: string): string => `is the acceptance value to expect, ${test}`,
  contentAcceptance: (substance: string): string => `is the acceptance value to expect by content of ${substance}`,
  limits: {
    mean: ({ kind, end }: LimitSide): string => `${kind} is the ${WORD_OF_END[end]} action limit of a sample mean`,
    alert: ({ kind, end }: LimitSide): string => `${kind} is the ${WORD_OF_END[end]} alert limit of a single capsule`,
    action: ({ kind, end }: LimitSide): string => `${kind} is the ${WORD_OF_END[end]} action limit of a single capsule`,
  },
  tareError: 'is the standard error of the tare',
  shellBlur: 'either way is what a shell blurs one gross weight by',
  target: 'is the target fill',
  diluent: 'of diluent',
  substance: (name: string): string => `of ${name} as delivered`,
  content: (name: string): string => `of the claim of ${name}, on average`,
  flowIndex: 'is the compressibility index',
  hausner: 'is the Hausner ratio',
  dose: 'in the capsule, net',
  mean: 'is the mean to expect before a trial',
} as const;

interface LimitSide {
  readonly kind: 'net' | 'gross';
  readonly end: 'low' | 'high';
}

const WORD_OF_END = { low: 'lower', high: 'upper' } as const;

/** Where an input comes from, in a few words. */
const ORIGINS = {
  part: (number: string): string => `part ${number}, by the inventory`,
  setAtMachine: 'set at the machine',
  struck: 'bore struck level at the feed density, with what the pin drags in',
  setWithPlay: 'set at the machine, half the play of its thread counts',
  law: 'packing that the law was fitted from',
  filler: (name: string): string => name,
  zeroCheck: (date: string | undefined): string => (date === undefined ? 'last zero check' : `zero check ${date}`),
  fromPair: 'solved from one pair of pressure and density',
  shell: (size: string): string => `figures of shell size ${size}`,
  shellLot: (lot: string | undefined): string => (lot === undefined ? 'shells weighed' : `shells weighed, lot ${lot}`),
  dossier: 'the brief',
  lot: 'assay of the lot, in the brief',
  draws: (count: number): string => `${count} of 100 draws of all that is not known`,
  shares: 'shares of the width of the mean',
  bias: 'assay, set-up and differences between times',
  assay: 'what the assay may be off, in the brief or 1\u202F%, a guess',
} as const;

/** What to know where the page shows something else than an entry computes. */
const REMARKS = {
  tareGuess:
    'The mass of the shells is trade custom, a guess: weigh 50 shells of the lot, then this number has an entry.',
  given: (rule: string): string => `It is given, not computed: ${rule}.`,
  dose: 'It is the mass when the last station is left.',
  mean: 'It is the mass of the dose at the means of everything that is not known; its interval comes from 512 draws.',
  gain: 'Without a subscript it is the median of 512 draws; with 0 it stands at the means, with every spring as drawn.',
} as const;

/** Words of the panel that opens a number in place. */
export const OPEN_NUMBER_WORDS = {
  titles: TITLES,
  origins: ORIGINS,
  remarks: REMARKS,
  close: 'Close',
  closeByEscape: 'Close, Esc',
  back: 'Back, Esc',
  nineInTen: (range: string): string => `${range}, 9 times in 10`,
  pending: 'interval follows',
  unknownEntry: (entry: string): string =>
    entry === ''
      ? 'The catalogue has no entry for this number.'
      : `The catalogue has no entry "${entry}" for this number.`,
  refused: (why: string): string => `The catalogue refuses these inputs: ${why}`,
  differs: (page: string): string =>
    `The page shows ${page}: recomputed here it differs. Do not use this number before that is cleared up.`,
  unitsNote: '1 g/mL is 1 mg/mm³; 1 MPa is 1 N/mm².',
  columns: {
    input: 'input',
    value: 'value',
    interval: '9 in 10',
    origin: 'where it comes from',
    share: 'share of width',
  },
  over: (text: string): string => `more than ${text}`,
  ofRank: (rank: number): string => `Of set-up ${rank} in the table, not of the one that is drawn.`,
  firstOf: (of: { first: string; count: number }): string => `${of.first} … ${of.count} values`,
  gone: 'This number is no longer on the page.',
  opens: 'opens',
  computedOpens: 'computed, opens',
  otherInputs: (count: number): string =>
    count === 1 ? '1 more input decides which equation holds' : `${count} more inputs decide which equation holds`,
  measured: ({ n, method, date, isAssumed }: { n: number; method: string; date: string; isAssumed: boolean }): string =>
    [n === 1 ? 'once' : `${n} times`, method, date, isAssumed ? 'spread of the method' : '']
      .filter((text) => text !== '')
      .join(', '),
  calibrated: (from: string): string => `from ${from}`,
  halvedBy: (code: string): string => EXTRA_HALVED_BY[code] ?? HALVED_BY_WORDS[code] ?? code,
  guessHalved: (how: string): string => `to halve it, ${how}`,
  noShare: 'none',
  smallShare: 'under 1\u202F%',
  asThere: 'as there',
  entry: 'entry',
  wholeEquation: 'the whole equation',
  equation: 'equation',
  holds: 'holds',
  rests: 'rests on',
  checked: 'checked',
  source: 'source',
  narrower: 'narrower',
  outputs: 'also gives',
  usedBy: 'Used by',
  usedByNothing: 'No other number of the page uses it.',
  whichChecks: 'which ones',
  checksNotLoaded: 'the check values did not arrive; the server does not answer',
  checking: 'check values are being recomputed',
  noChecks: 'no check value yet',
  checks: ({ passed, all }: { passed: number; all: number }): string =>
    passed === all
      ? `${all} check ${all === 1 ? 'value' : 'values'} recomputed here, ${all === 1 ? 'it agrees' : 'all agree'}`
      : `${all} check values recomputed here, ${all - passed} NOT passed`,
  checkRow: (of: { verdict: string; id: string; expected: string; got: string }): string =>
    `${of.verdict}: ${of.id}; ${of.expected} expected, ${of.got} got`,
  narrowed: ({ how, to }: { how: string; to: string }): string => `${how}: to ±${to}`,
  measureMore: (what: string): string => `four times as many measurements of ${what}`,
  moreChecks: (count: number): string => `and ${count} more`,
  yes: 'yes',
  no: 'no',
  leftOut: 'left out',
} as const;

const EXTRA_HALVED_BY: Readonly<Record<string, string>> = {
  'machine-record': 'weigh 20 capsules at each of five times of one run',
};
