import { allowedRange, type DomainErrorCode, type Facts, type InputFault } from '@fillwright/engine/catalogue';
import { plainNumber } from '#numbers';

/**
 * One thing that is wrong with an input, as one sentence: field, value, what is allowed, what to do.
 *
 * @param fault - the fault
 * @returns one sentence
 * @throws nothing
 * @source none: bookkeeping
 */
export function faultSentence(fault: InputFault): string {
  return FAULTS[fault.code](fault);
}

const FAULTS: Readonly<Record<InputFault['code'], (fault: InputFault) => string>> = {
  missing: (fault) => `${fault.field} is missing and has to be given${allowed(fault)}.`,
  'unknown-field': ({ field, nearest }) =>
    `${field} is not known here${nearest === undefined ? '; leave it out' : `; the nearest known name is ${nearest}`}.`,
  'wrong-kind': (fault) => `${fault.field} is ${shown(fault.value)}, which cannot be used here${allowed(fault)}.`,
  'not-finite': (fault) => `${fault.field} is not a finite number${allowed(fault)}.`,
  'out-of-range': (fault) => `${fault.field} is ${shown(fault.value)}, out of range${allowed(fault)}.`,
  'not-a-choice': (fault) =>
    `${fault.field} is ${shown(fault.value)}, which is not a choice${allowed(fault)}${meant(fault)}.`,
  'wrong-length': (fault) =>
    `${fault.field} has the wrong number of values, ${fault.value ?? 'unknown'}${allowed(fault)}.`,
  'decimal-comma': ({ field, value }) =>
    `${field} is ${shown(value)}; write a decimal point instead of the comma${withPoint(value)}.`,
  'unit-missing': ({ field, nearest }) =>
    `${field} does not say its unit; write the unit as part of the name${nearest === undefined ? '' : `: ${nearest}`}.`,
  'unit-wrong': ({ field, nearest, facts }) =>
    `${field} has a unit that is not used here; convert the value${nearest === undefined ? '' : ` and write ${nearest}${converted(facts)}`}.`,
  'quote-it': ({ field, value }) =>
    `${field} is ${value ?? 'given'} without quotation marks and would be read as a number; write "${value ?? ''}".`,
  'thousands-mark': ({ field, value }) =>
    `${field} is ${shown(value)}, which reads as more than one number; write digits and at most one decimal point, without any mark for thousands.`,
  'duplicate-key': ({ field, facts }) =>
    `${field} is given twice${facts === undefined ? '' : ` (first in line ${told(facts['firstLine'] ?? 'unknown')})`}; keep one of them.`,
  file: ({ field, value }) =>
    `${field === '' ? 'The file' : field} ${shown(value)} cannot be read; check that it exists and may be read.`,
  syntax: ({ field, value, rule, facts }) =>
    `${field === '' ? 'The text' : field} cannot be read${value === undefined ? '' : ` at ${shown(value)}`}${because(rule, facts)}; correct how it is written.`,
  conflict: (fault) =>
    `${fault.field}${fault.value === undefined ? '' : `, ${shown(fault.value)},`} does not agree with another value${because(fault.rule, fault.facts)}${allowed(fault)}; change one of them.`,
};

/**
 * Why a computation refused its input, as one sentence: what is wrong, with its numbers, and what to do.
 *
 * @param code - the reason
 * @param facts - its numbers and names
 * @returns one sentence
 * @throws nothing
 * @source none: bookkeeping
 */
export function domainErrorSentence(code: DomainErrorCode, facts: Facts): string {
  const { what, todo } = REFUSALS[code];
  return `${what}${inBrackets(facts)}; ${todo}.`;
}

const REFUSALS: Readonly<Record<DomainErrorCode, { readonly what: string; readonly todo: string }>> = {
  'bore-too-wide': {
    what: 'The bore is wider than the shell takes',
    todo: 'choose a narrower bore or a larger shell',
  },
  'excipients-above-total': {
    what: 'Substances and other excipients together weigh more than the fixed total',
    todo: 'raise the total, or lower the excipients or the overage',
  },
  'invalid-input': { what: 'The input does not fit this computation', todo: 'correct the fields named' },
  'mass-shares-not-one': {
    what: 'The mass shares do not add up to 1',
    todo: 'give the share of every component, as fractions of the whole mass',
  },
  'no-geometry': {
    what: 'Dimensions of this shell are not known',
    todo: 'measure the shell and give the dimensions that are missing',
  },
  'not-a-number': { what: 'A value is not a finite number', todo: 'give a number' },
  'not-positive': { what: 'A value must be above 0 and is not', todo: 'correct it' },
  'out-of-range': { what: 'A value lies outside the range in which the computation holds', todo: 'correct it' },
  'scale-unknown': {
    what: 'The scale of this station cannot be turned into a depth',
    todo: 'give its zero, and the height of the disc at the zero check where the pins stand on the base',
  },
  'tapped-below-bulk': {
    what: 'The tapped density is below the bulk density',
    todo: 'check whether the two were exchanged, since tapping cannot loosen a powder',
  },
  'unknown-method': {
    what: 'No method of this name is known',
    todo: 'look its name up in the list of methods',
  },
  'unlike-lengths': {
    what: 'Lists that belong together have different lengths',
    todo: 'give one value of each for every member',
  },
};

const BOUNDS = ['min', 'above', 'max', 'below'] as const;

/** Facts as ` (name value, name value; allowed: above 0)`; bounds among them are words of the allowed range. */
function inBrackets(facts: Facts): string {
  const values = Object.entries(facts).filter(([name]) => !BOUNDS.some((bound) => bound === name));
  const bounds = Object.fromEntries(
    BOUNDS.flatMap((name) => (typeof facts[name] === 'number' ? [[name, facts[name]]] : [])),
  );
  const text = values.map(([name, value]) => `${name} ${told(value)}`).join(', ');
  const allowed = Object.keys(bounds).length === 0 ? '' : `allowed: ${allowedRange({ unit: '1', ...bounds })}`;
  const inside = [text, allowed].filter((part) => part !== '').join('; ');
  return inside === '' ? '' : ` (${inside})`;
}

function told(value: Facts[string]): string {
  if (typeof value === 'number')
    return Number.isFinite(value) ? plainNumber(value, { upToSignificantDigits: 6 }) : 'none';
  if (typeof value === 'string') return value;
  return value.map((item) => told(item)).join(', ');
}

function allowed(fault: InputFault): string {
  return fault.allowed === undefined ? '' : `; allowed: ${fault.allowed}`;
}

function meant(fault: InputFault): string {
  return fault.nearest === undefined ? '' : `; the nearest is ${fault.nearest}`;
}

function shown(value: string | undefined): string {
  if (value === undefined || value.trim() === '') return 'empty';
  return Number.isNaN(Number(value)) ? `"${value}"` : value;
}

function withPoint(value: string | undefined): string {
  return value !== undefined && /^[+-]?\d*,\d+$/.test(value) ? `: ${value.replace(',', '.')}` : '';
}

/** `: 0.5`, the value in the unit that is used. */
function converted(facts: InputFault['facts']): string {
  const value = facts?.['converted'];
  return value === undefined ? '' : `: ${told(value)}`;
}

/** ` (the rule in words: name value, name value)`; the rule is a code of the one who found the fault. */
function because(rule: string | undefined, facts: InputFault['facts']): string {
  if (rule === undefined) return '';
  const numbers = Object.entries(facts ?? {}).map(([name, value]) => `${name} ${told(value)}`);
  return ` (${[rule.replaceAll('-', ' '), numbers.join(', ')].filter((part) => part !== '').join(': ')})`;
}
