import type { StruckReason } from '@fillwright/engine/weights';
import { numberToken } from './number-token.ts';
import type { MassUnit, WeightBasis } from './weights-read.ts';
import { wordOf, type Word } from './word-of.ts';

/** One weight as written, or why there is none. */
export type ParsedCell =
  | {
      readonly kind: 'value';
      /** Digits with a decimal point. */
      readonly text: string;
      readonly unit: MassUnit | undefined;
      readonly basis: WeightBasis | undefined;
      readonly time: string | undefined;
      /** A whole number before the weight: a running number if all lines agree. */
      readonly running: RunningNumber | undefined;
    }
  | {
      readonly kind: 'struck';
      readonly reason: StruckReason;
      readonly value: string | undefined;
      readonly mayBeWeight: boolean;
    };

interface RunningNumber {
  readonly index: number;
  /** With the weight it would also read as one number of more than 999. */
  readonly isLikeThousands: boolean;
}

type NumberWord = Extract<Word, { kind: 'number' }>;

/**
 * Reads one weight out of a cell, or out of a line without columns.
 *
 * @param text - the cell
 * @param unit - unit of the column, where its heading or the caller says one
 * @param isAfterFirst - a weight was read before: text beside a number is no heading of the list any more
 * @returns the weight as written, or the reason for which the line is struck
 */
export function parsedCell(text: string, { unit, isAfterFirst }: CellPlace): ParsedCell {
  const words = wordsOf(text, unit);
  if (words.length === 0) return struck('blank');
  const numbers = words.filter((word): word is NumberWord => word.kind === 'number');
  const has = (kind: Word['kind']): boolean => words.some((word) => word.kind === kind);
  if (has('summary')) return struck('total-or-mean');
  if (has('text')) return withText(words, isAfterFirst);
  const value = numbers.at(-1);
  if (value === undefined) return withoutNumber(words);
  if (has('unstable') || numbers.some(({ isUnstable }) => isUnstable)) return struck('unstable', value.written);
  if (numbers.length > 2) return struck('two-values', text.trim());
  return weightOf(words, numbers, text);
}

interface CellPlace {
  readonly unit: MassUnit | undefined;
  readonly isAfterFirst: boolean;
}

const SPACES = /[\u00a0\u202f\u2009]/;
const SPACE_OUTSIDE_NUMBER = /(?<!\d)[\u00a0\u202f\u2009]|[\u00a0\u202f\u2009](?!\d)/g;
const SIGN = /[+\-−]/;
const SIGN_APART = /(^|\s)([+\-−])\s+(?=[\d.,]*\d)/g;

function wordsOf(text: string, unit: MassUnit | undefined): Word[] {
  const spaced = SPACES.test(text) ? text.replace(SPACE_OUTSIDE_NUMBER, ' ') : text;
  const joined = SIGN.test(spaced) ? spaced.replace(SIGN_APART, '$1$2') : spaced;
  const words: Word[] = [];
  for (const word of joined.split(/[ \t|;]+/)) {
    if (word === '') continue;
    const isAfterNumber = words.at(-1)?.kind === 'number';
    words.push(wordOf(word, { unit, isAfterNumber }));
  }
  return words;
}

/** Words that nobody expects: a heading where they come first, else it can't be told what the number is. */
function withText(words: readonly Word[], isAfterFirst: boolean): ParsedCell {
  const numberAt = words.findIndex(({ kind }) => kind === 'number');
  if (numberAt < 0) return struck('heading');
  const textAt = words.findIndex(({ kind }) => kind === 'text');
  const bearsUnit = words.some((word) => word.kind === 'unit' || (word.kind === 'number' && word.unit !== undefined));
  return textAt > numberAt || (isAfterFirst && bearsUnit) ? struck('not-clear') : struck('heading');
}

function withoutNumber(words: readonly Word[]): ParsedCell {
  if (words.some(({ kind }) => kind === 'no-value' || kind === 'time')) return struck('no-value');
  if (words.some(({ kind }) => kind === 'unstable')) return struck('unstable');
  return struck('heading');
}

function weightOf(words: readonly Word[], numbers: readonly NumberWord[], text: string): ParsedCell {
  const { number: alone, written } = numbers.at(-1)!;
  const beside = besideOf(words);
  // With its unit beside it a number may read otherwise: 1.053 g holds no thousands.
  const number = beside.unit === 'mg' || beside.unit === 'g' ? numberToken(written, beside.unit) : alone;
  if (number.kind !== 'number') return struck(number.kind === 'thousands-mark' ? number.kind : 'not-clear', written);
  if (beside.unit === 'other') return struck('unit-not-known', text.trim());
  if (!number.isPositive) return struck('not-positive', written);
  const running = numbers.length === 2 ? runningNumber(numbers, text) : undefined;
  if (typeof running === 'string') return struck(running, text.trim());
  return { kind: 'value', text: number.text, unit: beside.unit, basis: beside.basis, time: beside.time, running };
}

/** What stands beside the weight. */
function besideOf(words: readonly Word[]): Beside {
  const beside: Beside = { unit: undefined, basis: undefined, time: undefined };
  for (const word of words) {
    if (word.kind === 'basis') beside.basis ??= word.basis;
    else if (word.kind === 'time') beside.time ??= word.written;
    else if ((word.kind === 'unit' || word.kind === 'number') && beside.unit !== 'other')
      beside.unit = word.unit ?? beside.unit;
  }
  return beside;
}

interface Beside {
  unit: MassUnit | 'other' | undefined;
  basis: WeightBasis | undefined;
  time: string | undefined;
}

/** The whole number without unit before a weight, or why the line is struck. */
function runningNumber(
  [first, second]: readonly NumberWord[],
  text: string,
): RunningNumber | 'two-values' | 'thousands-mark' {
  const isRunning = first?.number.kind === 'number' && first.number.isWhole && first.unit === undefined;
  if (!isRunning || !second) return 'two-values';
  const isLikeThousands =
    /^\d{1,3}$/.test(first.written) &&
    /^\d{3}([.,]|$)/.test(second.written) &&
    text.includes(`${first.written} ${second.written}`);
  // Nobody writes a weight as 053,2.
  if (isLikeThousands && second.written.startsWith('0')) return 'thousands-mark';
  return { index: Number(first.number.text), isLikeThousands };
}

const HARMLESS: ReadonlySet<StruckReason> = new Set(['blank', 'heading', 'total-or-mean', 'no-value']);

function struck(reason: StruckReason, value?: string): ParsedCell {
  return { kind: 'struck', reason, value, mayBeWeight: !HARMLESS.has(reason) };
}
