import type { MassUnit } from '@fillwright/contract/weights';
import type { Purpose, WeightTest } from '@fillwright/engine/weights';
import { ACCEPT_WORDS, COMMAND_LINE, WEIGHT_TEST_NAMES } from '@fillwright/words/en';
import { readArguments } from '../arguments.ts';
import { givenOnly } from './given-only.ts';

/** What a person asks of `fillwright accept`. */
export interface AcceptRequest {
  readonly path: string;
  readonly brief?: string;
  readonly shells?: string;
  readonly purpose: Purpose;
  readonly tests: readonly WeightTest[];
  readonly basis?: 'gross' | 'net';
  readonly unit?: MassUnit;
  readonly rounding?: 'unrounded' | 'half-up';
  /** Figures by flag; those not given are left out. */
  readonly figures: Readonly<Partial<Record<Figure, number>>>;
  readonly isRevolution: boolean;
  readonly hasOwnShells: boolean;
  readonly isJson: boolean;
}

/** Flags that take a number, with their allowed range. */
const FIGURES = {
  target_mg: { above: 0, max: 100_000, isWhole: false },
  'mean-action_pct': { above: 0, max: 99, isWhole: false },
  'individual-action_pct': { above: 0, max: 99, isWhole: false },
  'individual-alert_pct': { above: 0, max: 99, isWhole: false },
  'sample-count': { above: 0, max: 100_000, isWhole: true },
  assay_pct: { above: 0, max: 1000, isWhole: false },
  'target-content_pct': { above: 0, max: 120, isWhole: false },
  'load-count': { above: 0, max: 100, isWhole: true },
  'group-count': { above: 1, max: 1000, isWhole: true },
  'column-count': { above: 1, max: 1000, isWhole: true },
  'set-up': { above: 0, max: 1000, isWhole: true },
} as const;

/** Flags of figures; each says its own unit. */
type Figure = keyof typeof FIGURES;

const CHOICES = {
  purpose: ['trial', 'in-process', 'release'],
  basis: ['gross', 'net'],
  unit: ['mg', 'g'],
  rounding: ['unrounded', 'half-up'],
} as const;

const TEXTS = { brief: 'value', shells: 'value', test: 'list' } as const;
const SWITCHES = { revolution: 'switch', 'own-shells': 'switch', json: 'switch' } as const;

/**
 * Reads the command line of `fillwright accept`.
 *
 * @param args - what stands after the command
 * @returns the request, everything that is wrong with it, or `help`
 */
export function acceptRequest(args: readonly string[]): AcceptRequest | { readonly wrong: readonly string[] } | 'help' {
  const valued = [...Object.keys(FIGURES), ...Object.keys(CHOICES)].map((name) => [name, 'value'] as const);
  const { words, values, switches, problems } = readArguments(args, {
    ...{ ...TEXTS, ...SWITCHES, ...Object.fromEntries(valued) },
  });
  if (switches.has('help')) return 'help';
  const [path, ...further] = words;
  const wrong = [...problems, ...further.map((word) => COMMAND_LINE.wordNotTaken(word))];
  if (path === undefined) wrong.push(ACCEPT_WORDS.weightsMissing);
  const chosen = choicesOf(values, wrong);
  const tests = testsOf(values.get('test') ?? [], wrong);
  const figures = figuresOf(values, wrong);
  const [brief, shells] = [values.get('brief')?.[0], values.get('shells')?.[0]];
  if (path === '-' && shells === '-') wrong.push(ACCEPT_WORDS.inputTwice);
  if (path === undefined || wrong.length > 0) return { wrong };
  return {
    ...{ path, purpose: 'trial', ...chosen, tests, figures, ...givenOnly({ brief, shells }) },
    ...{ isRevolution: switches.has('revolution'), hasOwnShells: switches.has('own-shells') },
    isJson: switches.has('json'),
  };
}

type Choices = { readonly [name in keyof typeof CHOICES]?: (typeof CHOICES)[name][number] };

function choicesOf(values: Values, wrong: string[]): Choices {
  const chosen: Partial<Record<string, string>> & Choices = {};
  for (const [name, known] of Object.entries(CHOICES)) {
    const text = values.get(name)?.[0];
    if (text === undefined) continue;
    if (known.some((each) => each === text)) chosen[name] = text;
    else wrong.push(ACCEPT_WORDS.notAChoice(`--${name}`, text, known));
  }
  return chosen;
}

type Values = ReadonlyMap<string, readonly string[]>;

function testsOf(texts: readonly string[], wrong: string[]): WeightTest[] {
  const known = Object.keys(WEIGHT_TEST_NAMES) as WeightTest[];
  return [...new Set(texts)].flatMap((text) => {
    const test = known.find((each) => each === text);
    if (test === undefined) wrong.push(ACCEPT_WORDS.notAChoice('--test', text, known));
    return test === undefined ? [] : [test];
  });
}

function figuresOf(values: Values, wrong: string[]): AcceptRequest['figures'] {
  const figures: Partial<Record<Figure, number>> = {};
  for (const name of Object.keys(FIGURES) as Figure[]) {
    const text = values.get(name)?.[0];
    if (text === undefined) continue;
    const { above, max, isWhole } = FIGURES[name];
    // One mark, point or comma, is a decimal mark where no three digits follow it.
    const isNumber = isWhole ? /^\d+$/.test(text) : /^\d+([.,]\d{1,2}|\.\d+|,\d{4,})?$/.test(text);
    const value = isNumber ? Number(text.replace(',', '.')) : NaN;
    if (value > above && value <= max) figures[name] = value;
    else wrong.push(ACCEPT_WORDS.notInRange({ flag: `--${name}`, text, above, max, isWhole }));
  }
  return figures;
}
