import type { Entry, Field } from '@fillwright/engine/catalogue';
import { standardUncertainty, type Quantity } from '@fillwright/engine/quantity';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import { LETTER_MEANINGS } from './equation/letter-meanings.table.ts';
import type { ShownEquation } from './equation/shown-equation.ts';
import type { InputOrigin, NumberKey, NumberReference, NumberReferences } from './number-reference.ts';
import { numberText, rangeText } from './number-text.ts';
import { openedNumber } from './opened-number.ts';

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
/** Entries of the station model: the equation of one number uses few of their many inputs. */
const MANY_INPUTS = /^dosing\.disc-(stations|recurrence|step-gain|part-change)$/;

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
  const inputs = entry.inputs.flatMap((field): InputRow[] => {
    const value = valueText(field, reference);
    if (value === undefined) return [];
    const symbol = symbols[field.key];
    const isInEquation = !MANY_INPUTS.test(entry.id) || isUsed(symbol, shown);
    const origin = reference.origins?.[field.key] ?? {};
    return [
      {
        ...{ key: field.key, title: titleOf(field, symbol), value, isInEquation },
        ...(symbol === undefined ? {} : { symbol }),
        ...originOf(field, reference, origin),
        ...(origin.number !== undefined && of.references[origin.number] ? { number: origin.number } : {}),
      },
    ];
  });
  return [...made, ...inputs];
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

function numberRow(key: NumberKey, references: NumberReferences): readonly InputRow[] {
  const reference = references[key];
  if (!reference) return [];
  const { text } = openedNumber(reference);
  const letter = { mass: 'm', force: 'F' }[key.split(':')[0] ?? ''];
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
      ...(letter === undefined ? {} : { symbol: `${letter}_${String(reference.station ?? '')}` }),
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
  const unit = 'unit' in field ? field.unit : '1';
  const text = (one: unknown): string =>
    typeof one === 'number' ? numberText(one, { unit, digits: DIGITS }) : String(one);
  return Array.isArray(value) ? value.map(text).join(', ') : text(value);
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
