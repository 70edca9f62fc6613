import { allowedRange } from '@fillwright/engine/catalogue';
import { plainNumber } from '#numbers';

/** What the fields of the screen say. */
export const FIELD_WORDS = {
  /** Why a typed text is not taken as a number. */
  refused: {
    'thousands-mark': (text: string): string =>
      `“${text}” has marks that could part thousands; type digits and at most one decimal point or comma.`,
    ambiguous: (text: string): string => {
      const [whole = '', decimals = ''] = text.trim().split(/[.,]/);
      return `“${text}” could be ${whole}${decimals} or ${whole}.${decimals}0; type one of these two.`;
    },
    'several-numbers': (text: string): string => `“${text}” is more than one number; this field takes one.`,
    'other-unit': (text: string, unit: string): string =>
      unit === ''
        ? `“${text}” has something after the number; this field takes a number without a unit.`
        : `“${text}” is in another unit; convert it to ${unit}, nothing is converted here.`,
    'foreign-digits': (text: string): string => `“${text}” has digits other than 0 to 9; type them as 0 to 9.`,
    'too-large': (text: string): string => `“${text}” is larger than any number that can be computed.`,
    'not-a-number': (text: string): string => `“${text}” is no number; type digits, with a decimal point or comma.`,
  },
  notWhole: (text: string): string => `${text} is not a whole number; this field counts.`,
  outOfRange: (text: string, range: Parameters<typeof allowedRange>[0]): string =>
    `${text} is out of range; allowed: ${allowedRange(range)}.`,
  missing: 'This has to be given.',
  optional: 'optional',
  /** What a number rests on. */
  marks: { measured: 'measured', calibrated: 'learned from weights', guess: 'guess' },
  guessed: (of: { mean: number; sd?: number }): string =>
    `guess ${shown(of.mean)}${of.sd === undefined ? '' : ` ± ${shown(of.sd)}`}`,
  one: 'one measurement; the spread of its method is assumed',
  several: (of: { n: string; sd: string; method?: string; date?: string }): string =>
    [`mean of ${of.n}`, `sd ${of.sd}`, of.method, of.date].filter((part) => part !== undefined).join(', '),
  learned: (of: { sd: string; from: string }): string => `learned from ${of.from}, sd ${of.sd}`,
  nothing: 'not given, so a guess',
  incomplete: 'The spread is kept as soon as standard deviation and number of values are both there.',
  sd: 'Standard deviation',
  sdHelp: 'Of the single values, not of their mean.',
  n: 'Number of values',
  nHelp: 'How many values the mean is of.',
  method: 'Method',
  methodHelp: 'How it was measured, in a few words.',
  date: 'Date',
  dateHelp: 'When it was measured, as 2026-03-02.',
  from: 'Learned from',
  fromHelp: 'Weights of which trial or lots.',
  open: (label: string): string => `${label}: how it was measured`,
  toOne: 'Keep the number as one measurement',
  toGuess: 'Back to the guess',
  yes: 'yes',
  no: 'no',
  unset: 'not said',
  notAChoice: (text: string): string => `${text} (not a choice)`,
  add: (what: string): string => `Add ${what}`,
  removeShort: 'Remove',
  remove: (what: string): string => `Remove ${what}`,
} as const;

function shown(value: number): string {
  return plainNumber(value, { upToSignificantDigits: 4 });
}
