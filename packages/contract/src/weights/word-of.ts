import {
  BASIS_WORDS,
  LABEL_WORDS,
  NO_VALUE_WORDS,
  OTHER_UNITS,
  SILENT_WORDS,
  SUMMARY_WORDS,
} from './line-words.table.ts';
import { numberToken, type NumberToken } from './number-token.ts';
import type { MassUnit, WeightBasis } from './weights-read.ts';

/** One word of a line, by what it can be. */
export type Word =
  | {
      readonly kind: 'number';
      readonly number: NumberToken;
      readonly written: string;
      readonly unit: MassUnit | 'other' | undefined;
      readonly isUnstable: boolean;
    }
  | { readonly kind: 'unit'; readonly unit: MassUnit | 'other' }
  | { readonly kind: 'basis'; readonly basis: WeightBasis }
  | { readonly kind: 'time'; readonly written: string }
  | { readonly kind: 'summary' | 'no-value' | 'unstable' | 'label' | 'silent' | 'text' };

const HAS_DIGIT = /\d/;
/** Most words with digits: a number and nothing else. */
const BARE = /^\d+([.,]\d+)?$/;
const TIME = /^\d{1,2}:\d{2}(:\d{2})?$/;
const DATE = /^(\d{4}-\d{2}-\d{2}(T[\d:.]+Z?)?|\d{1,2}([./-])\d{1,2}\3\d{2,4})$/;
const NUMBER_AND_UNIT = /^([+\-−]?[\d.,'’_\u00a0\u202f\u2009]*\d[.,]?(?:e[+-]?\d{1,2})?)([^\d\s?*]*)(\?*)$/i;
const DASHES = /^[-–—_.,]+$/;

/**
 * What a word of a line is.
 *
 * @param word - letters and digits without blanks
 * @param place - the unit of the column, and whether a number stands before the word (then `g` is a unit)
 * @returns the word by its kind; a number with the unit that is written to it
 */
export function wordOf(
  word: string,
  place: { readonly unit: MassUnit | undefined; readonly isAfterNumber: boolean },
): Word {
  const found = HAS_DIGIT.test(word) ? wordOfDigits(word, place.unit) : undefined;
  return found ?? wordOfLetters(word, place.isAfterNumber);
}

function wordOfDigits(word: string, unit: MassUnit | undefined): Word | undefined {
  if (BARE.test(word))
    return { kind: 'number', number: numberToken(word, unit), written: word, unit: undefined, isUnstable: false };
  if (TIME.test(word)) return { kind: 'time', written: word };
  if (DATE.test(word)) return { kind: 'silent' };
  return numberWord(word, unit);
}

function wordOfLetters(word: string, isAfterNumber: boolean): Word {
  if (isAfterNumber) {
    const unit = unitOf(word.replace(/^[([]|[)\]]$/g, ''));
    if (unit !== 'other' || OTHER_UNITS.has(word.toLowerCase())) return { kind: 'unit', unit };
  }
  const basis = BASIS_WORDS[word];
  return basis === undefined ? { kind: plainKind(word) } : { kind: 'basis', basis };
}

function numberWord(word: string, unitOfColumn: MassUnit | undefined): Word | undefined {
  const match = NUMBER_AND_UNIT.exec(word);
  if (!match) return undefined;
  const [, written = '', letters = '', marks = ''] = match;
  const unit = letters === '' ? undefined : unitOf(letters);
  const number = numberToken(written, unit === 'mg' || unit === 'g' ? unit : unitOfColumn);
  return { kind: 'number', number, written, unit, isUnstable: marks !== '' };
}

function unitOf(letters: string): MassUnit | 'other' {
  if (letters === 'g') return 'g';
  return /^mg$/i.test(letters) ? 'mg' : 'other';
}

function plainKind(word: string): 'summary' | 'no-value' | 'unstable' | 'label' | 'silent' | 'text' {
  if (/^\?+$/.test(word) || /^unstable$/i.test(word)) return 'unstable';
  const lower = word.toLowerCase();
  if (NO_VALUE_WORDS.has(lower) || DASHES.test(word)) return 'no-value';
  if (SILENT_WORDS.has(word) || /^mg$/i.test(word) || word === 'g') return 'silent';
  const bare = lower.replace(/[:=.,;()]+$/, '');
  if (SUMMARY_WORDS.has(bare) && (bare.length > 1 || word !== bare.toUpperCase())) return 'summary';
  return LABEL_WORDS.has(bare) ? 'label' : 'text';
}
