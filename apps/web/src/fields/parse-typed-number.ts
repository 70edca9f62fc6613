import { isWithin, type NumberRange } from './number-range.ts';

/** Why a text is not taken as a number; `words` has a sentence for each. */
type NumberRefusal =
  'thousands-mark' | 'ambiguous' | 'several-numbers' | 'other-unit' | 'foreign-digits' | 'too-large' | 'not-a-number';

/** What a person meant: a number, nothing, or something that is not guessed at. */
export type TypedNumber =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'refused'; readonly refusal: NumberRefusal; readonly rest?: string };

export interface TypedInto {
  /** Unit of the field as the catalogue spells it; it may be typed or pasted along. Left out or `1`: none. */
  readonly unit?: string;
  /** Settles whether `1,512` is 1.512 or 1512 where only the former makes sense. */
  readonly range?: NumberRange;
}

const UNSEEN = /[\u200b-\u200f\u202a-\u202e\u2060\ufeff]/g;
/** What spreadsheets put around the text of a cell. */
const AROUND = /^(?:"(.*)"|'(.*)'|'(.*))$/;
/** A sign, digits with marks between them, an exponent; then whatever else was typed. */
const START = /^([+-]?)(\d[\d.,]*|[.,]\d[\d.,]*)(e[+-]?\d+)?\s*(.*)$/i;
/** Digits in groups of three with the marks that somewhere part thousands. */
const GROUPED = /^[+-]?\d{1,3}(?:[ \u00a0\u2009\u202f'’_]\d{3})+(?:[.,]\d+)?(?!\d)/;
const FOREIGN_DIGIT = /(?![0-9])\p{Nd}/u;

/**
 * Reads what a person typed or pasted into a number field. Never rounds, never clamps, never guesses: a decimal comma
 * and a decimal point are the same, one of them at most; the own unit and what spreadsheets put around a cell are taken
 * away; `1e3` is 1000, as in a file. Where a mark could part thousands the text is refused, unless the range leaves
 * one decimal reading (`1,512` g/mL cannot be 1512).
 *
 * @param text - as it was typed
 * @param field - unit and range of the field
 * @returns the number, empty, or why it is refused
 */
export function parseTypedNumber(text: string, field: TypedInto = {}): TypedNumber {
  const inside = withoutWrapping(text);
  if (inside === '') return { kind: 'empty' };
  if (FOREIGN_DIGIT.test(inside)) return refused('foreign-digits');
  if (GROUPED.test(inside)) return refused('thousands-mark');
  const [, sign = '', digits = '', exponent = '', rest = ''] = START.exec(inside) ?? [];
  if (digits === '') return refused('not-a-number');
  return afterNumber(rest, field.unit) ?? numberOf({ sign, digits, exponent }, field.range);
}

/** What stands behind the number, unless it is nothing or the unit of the field. */
function afterNumber(rest: string, unit = '1'): TypedNumber | undefined {
  if (rest === '' || isUnit(rest, unit)) return undefined;
  if (/^[\p{L}%°]/u.test(rest)) return { ...refused('other-unit'), rest };
  return refused(/\d/.test(rest) ? 'several-numbers' : 'not-a-number');
}

function numberOf(
  { sign, digits, exponent }: Readonly<Record<'sign' | 'digits' | 'exponent', string>>,
  range: NumberRange | undefined,
): TypedNumber {
  if (digits.replace(/\d/g, '').length > 1) return refused('thousands-mark');
  const value = Number(`${sign}${digits.replace(',', '.')}${exponent}`);
  if (!Number.isFinite(value)) return refused('too-large');
  if (exponent === '' && isAmbiguous(value, { digits, range })) return refused('ambiguous');
  return { kind: 'number', value: value === 0 ? 0 : value };
}

function refused(refusal: NumberRefusal): { readonly kind: 'refused'; readonly refusal: NumberRefusal } {
  return { kind: 'refused', refusal };
}

function withoutWrapping(text: string): string {
  const trimmed = text.replace(UNSEEN, '').replace(/\s+/g, ' ').trim();
  const cell = AROUND.exec(trimmed);
  return (cell ? cell.slice(1).join('') : trimmed).trim().replaceAll('\u2212', '-');
}

/** `1,234` and `1.234` are one or a thousand, unless only one is in the range; `0,234` and `1234,567` are not. */
function isAmbiguous(value: number, { digits, range }: { digits: string; range: NumberRange | undefined }): boolean {
  if (!/^[1-9]\d{0,2}[.,]\d{3}$/.test(digits)) return false;
  return range === undefined || !isWithin(value, range) || isWithin(value * 1000, range);
}

/** Other spellings of the same unit, by the catalogue's spelling. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  'g/mL': ['g/ml', 'g/cm3', 'g/cm³', 'g/cc', 'g mL-1', 'g·mL⁻¹'],
  '1/MPa': ['/MPa', 'MPa-1', 'MPa^-1', 'MPa⁻¹'],
  mm3: ['mm³', 'µL', 'μL', 'uL'],
  '%': ['percent', 'per cent', 'pct'],
};

function isUnit(text: string, unit: string): boolean {
  return unit !== '1' && [unit, ...(SPELLINGS[unit] ?? [])].includes(text.trim());
}
