import type { Entry, Field } from '@fillwright/engine/catalogue';
import { standardUncertainty, type Quantity } from '@fillwright/engine/quantity';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import { LETTER_MEANINGS } from './equation/letter-meanings.table.ts';
import type { ShownEquation } from './equation/shown-equation.ts';
import type { InputOrigin, NumberKey, NumberReference, NumberReferences } from './number-reference.ts';
import { numberText, rangeText } from './number-text.ts';
import { openedNumber } from './opened-number.ts';
import { unitOfData } from './unit-of-data.ts';

/** One input of a number, for the table. */
export interface InputRow {
  readonly key: string;
  /** Letter of the equation, spelt as `symbolText` does. */
  readonly symbol?: string;
  readonly title: string;
  readonly value: string;
  /** Central 90 %, empty where nothing is uncertain. */
  readonly interval: string;
  readonly basis?: Quantity['basis'];
  /** Where it comes from, and what is known of it; either may be empty. */
  readonly words: string;
  readonly known: string;
  /** Another number of the page that it is. */
  readonly number?: NumberKey;
  /** Parameter whose share of the width it is. */
  readonly parameter?: string;
  /** Stands in the equation that is shown; the others decide only which equation holds. */
  readonly isInEquation: boolean;
}

const Z_90 = 1.6448536269514722;
const DIGITS = 4;
/** Longer lists are told by their first values and their count. */
const MOST_LISTED = 12;
const FIRST_LISTED = 4;
/** Entries of the station model: the equation of one number uses few of their many inputs. */
const MANY_INPUTS = /^dosing\.disc-(stations|recurrence|step-gain|part-change)$|^shells\.slug-fit$/;
/** Where the shown line only names the model, all that is uncertain in it counts. */
const BY_MODEL = /^dosing\.disc-step-gain$/;

/**
 * The inputs of a number with value, interval and origin.
 *
 * @param reference - the number
 * @param entry - its entry
 * @param of - its equation, and the other numbers of the page
 * @returns rows: first other numbers it is made from, then the inputs in the entry's order
 */
export function inputRows(
  reference: NumberReference,
  entry: Entry,
  of: { readonly equation: ShownEquation | undefined; readonly references: NumberReferences },
): readonly InputRow[] {
  const symbols = symbolsOf(reference);
  const shown = of.equation?.symbols ?? new Set<string>();
  const made = (reference.from ?? []).flatMap((key) => numberRow(key, of.references));
  const inputs = entry.inputs.flatMap((field): readonly InputRow[] => {
    const value = valueText(field, reference);
    if (value === undefined) return [];
    const symbol = symbols[field.key];
    const origin = reference.origins?.[field.key] ?? {};
    const isModelled = BY_MODEL.test(entry.id) && origin.parameter !== undefined;
    const isInEquation = !MANY_INPUTS.test(entry.id) || isModelled || isUsed(symbol, shown);
    const row: InputRow = {
      ...{ key: field.key, title: titleOf(field, symbol), value, isInEquation },
      ...(symbol === undefined ? {} : { symbol }),
      ...originOf(field, reference, origin),
      ...(origin.number !== undefined && of.references[origin.number] ? { number: origin.number } : {}),
    };
    return itemRows(row, field, reference) ?? [row];
  });
  return [...made, ...inputs];
}

/** A list whose items are different things: one row each, with the letter's own subscript. */
function itemRows(row: InputRow, field: Field, { inputs, items }: NumberReference): readonly InputRow[] | undefined {
  const values = inputs[field.key];
  const names = items?.[field.key];
  if (!names || !Array.isArray(values)) return undefined;
  const unit = 'unit' in field ? field.unit : '1';
  return (values as readonly number[]).map((value, i) => ({
    ...{ ...row, key: `${row.key} ${i}`, title: names[i] ?? row.title },
    value: numberText(value, { unit, digits: DIGITS }),
    ...(row.symbol === undefined ? {} : { symbol: row.symbol.replace(/_i$/, `_${i + 1}`) }),
  }));
}

/** Some titles of the catalogue end with their letter, which has a column of its own here. */
function titleOf({ title }: Field, symbol: string | undefined): string {
  const end = `, ${symbol ?? ''}`;
  return symbol !== undefined && title.endsWith(end) ? title.slice(0, -end.length) : title;
}

/** The area stands for the bore it was made from; a reached depth for the one that was set. */
function isUsed(symbol: string | undefined, shown: ReadonlySet<string>): boolean {
  if (symbol === undefined) return false;
  if (symbol === 'D') return shown.has('A') || shown.has('D');
  return shown.has(symbol) || (symbol.startsWith('p_') && shown.has(symbol.replace('p', 'x')));
}

function symbolsOf({ entry, station }: NumberReference): Readonly<Record<string, string>> {
  const meanings = Object.entries(LETTER_MEANINGS[entry] ?? {});
  const ofStation = (letter: string): string => letter.replace(/_k$/, `_${String(station ?? 'k')}`);
  return Object.fromEntries(meanings.map(([letter, { key }]) => [key, ofStation(letter)]));
}

/** Letters of other numbers of the page in the equations that are made from them. */
const NUMBER_LETTERS: Readonly<Record<string, string>> = {
  ...{ mass: 'm', force: 'F', 'slug-dead': 'dead', 'slug-proud': 'proud' },
};

function numberRow(key: NumberKey, references: NumberReferences): readonly InputRow[] {
  const reference = references[key];
  if (!reference) return [];
  const { text } = openedNumber(reference);
  const [name = '', station] = key.split(':');
  const letter = NUMBER_LETTERS[name];
  return [
    {
      ...{
        key,
        number: key,
        title: reference.title,
        value: text,
        interval: '',
        words: '',
        known: '',
        isInEquation: true,
      },
      ...(letter === undefined ? {} : { symbol: station === undefined ? letter : `${letter}_${station}` }),
    },
  ];
}

/** Of values by station the one of this station. */
function ownValue({ inputs, station }: NumberReference, key: string): unknown {
  const value = inputs[key];
  return Array.isArray(value) && station !== undefined && value.length > 1 ? (value as unknown[])[station - 1] : value;
}

function valueText(field: Field, reference: NumberReference): string | undefined {
  const value = ownValue(reference, field.key);
  if (value === undefined) return undefined;
  if (typeof value === 'boolean') return value ? OPEN_NUMBER_WORDS.yes : OPEN_NUMBER_WORDS.no;
  const unit = 'unit' in field ? unitOfData(field.unit, reference.unit) : '1';
  const text = (one: unknown): string =>
    typeof one === 'number' ? numberText(one, { unit, digits: DIGITS }) : String(one);
  if (!Array.isArray(value)) return text(value);
  const shown = value.slice(0, value.length > MOST_LISTED ? FIRST_LISTED : value.length).map(text);
  return shown.length === value.length
    ? shown.join(', ')
    : OPEN_NUMBER_WORDS.firstOf({ first: shown.join(', '), count: value.length });
}

function originOf(
  field: Field,
  reference: NumberReference,
  { quantity, isSolved, basis = quantity?.basis, words = '', parameter }: InputOrigin,
): Pick<InputRow, 'interval' | 'basis' | 'words' | 'known' | 'parameter'> {
  const value = ownValue(reference, field.key);
  const sd = quantity && !isSolved ? standardUncertainty(quantity) : 0;
  return {
    interval: typeof value === 'number' && sd > 0 ? rangeText(value - Z_90 * sd, value + Z_90 * sd) : '',
    ...(basis === undefined ? {} : { basis }),
    ...{ words, known: quantity ? quantityWords(quantity) : '' },
    ...(parameter === undefined ? {} : { parameter }),
  };
}

function quantityWords(quantity: Quantity): string {
  switch (quantity.basis) {
    case 'measured':
      return OPEN_NUMBER_WORDS.measured({
        ...{ n: quantity.n, method: quantity.method ?? '', date: quantity.date ?? '' },
        isAssumed: quantity.sdAssumed ?? false,
      });
    case 'calibrated':
      return OPEN_NUMBER_WORDS.calibrated(quantity.from);
    case 'guess':
      return OPEN_NUMBER_WORDS.guessHalved(OPEN_NUMBER_WORDS.halvedBy(quantity.halvedBy));
  }
}
