import type { Entry } from '@fillwright/engine/catalogue';
import { plainNumber } from '@fillwright/words/numbers';
import { equationLines, type EquationLine } from '../latex/equation-lines.ts';
import { numbersPutIn, type PrintedLetters } from '../latex/numbers-put-in.ts';
import { parseLatex } from '../latex/parse-latex.ts';
import { symbolsIn } from '../latex/symbols-in.ts';
import type { Letter, NumberReference } from '../number-reference.ts';
import type { ChosenEquation } from './chosen-equation.ts';
import { discEquation } from './disc-equation.ts';
import { gainEquation } from './gain-equation.ts';
import { LETTER_MEANINGS } from './letter-meanings.table.ts';
import { lineOfEntry } from './line-of-entry.ts';
import { spreadEquation } from './spread-equation.ts';

/** An equation for the panel: with its letters, with its numbers, and which letters the drawing can show. */
export interface ShownEquation {
  readonly lines: readonly { readonly letters: EquationLine; readonly numbers: EquationLine | undefined }[];
  readonly inDrawing: readonly Letter[];
  /** Every letter of it, spelt as `symbolText` does. */
  readonly symbols: ReadonlySet<string>;
}

const DIGITS = { upToSignificantDigits: 4 } as const;

/**
 * The equation of a number, and below each line the same with the numbers put in.
 *
 * @param reference - the number
 * @param entry - its entry
 * @param outputs - what the entry computed
 * @returns the lines; a line in which no letter has a number stands alone
 */
export function shownEquation(
  reference: NumberReference,
  entry: Entry,
  outputs: Readonly<Record<string, unknown>>,
): ShownEquation {
  const chosen = chosenEquation(reference, outputs);
  const latex = chosen?.latex ?? lineOfEntry(reference) ?? entry.equation;
  const printed = chosen ? printedValues(chosen.values) : printedLetters(reference, outputs);
  const equation = parseLatex(latex);
  const symbols = symbolsIn(equation);
  const lettered = equationLines(equation);
  const numbered = equationLines(numbersPutIn(equation, printed));
  return {
    lines: lettered.map((letters, i) => {
      const numbers = numbered[i];
      return { letters, numbers: JSON.stringify(numbers) === JSON.stringify(letters) ? undefined : numbers };
    }),
    inDrawing: chosen?.inDrawing ?? lettersInDrawing(reference, symbols),
    symbols,
  };
}

/** Entries of which the panel shows another line than the catalogue's, with values of its own. */
function chosenEquation(
  reference: NumberReference,
  outputs: Readonly<Record<string, unknown>>,
): ChosenEquation | undefined {
  switch (reference.entry) {
    case 'dosing.disc-step-gain':
      return gainEquation(reference, outputs);
    case 'dosing.unit-spread':
      return spreadEquation(reference, outputs);
    default:
      return discEquation(reference, outputs);
  }
}

const printedValue = (value: number): string => plainNumber(value, DIGITS).replaceAll('-', '−');

function printedValues(values: Readonly<Record<string, number>>): PrintedLetters {
  return Object.fromEntries(Object.entries(values).map(([letter, value]) => [letter, printedValue(value)]));
}

/** Inputs given in per cent stand with their sign; an output is the number that the equation gives. */
function printedLetters(reference: NumberReference, outputs: Readonly<Record<string, unknown>>): PrintedLetters {
  const meanings = Object.entries(LETTER_MEANINGS[reference.entry] ?? {});
  const printed = meanings.flatMap(([letter, { key }]): [string, string][] => {
    const isInput = key in reference.inputs;
    const text = printedOf(isInput ? reference.inputs[key] : outputs[key], reference.item);
    if (text === undefined) return [];
    return [[letter, isInput && key.endsWith('_pct') ? `${text}\u202F%` : text]];
  });
  return { ...Object.fromEntries(printed), ...printedValues(reference.letters ?? {}) };
}

/** Of a list the value that is open; the terms of a sum all of them. */
function printedOf(value: unknown, item: number | undefined): string | undefined {
  if (Array.isArray(value)) {
    const chosen: readonly unknown[] = item === undefined ? value : [value[item]];
    const texts = chosen.map((one) => printedOf(one, item));
    if (texts.includes(undefined)) return undefined;
    return texts.length > 1 ? `(${texts.join(' + ')})` : texts[0];
  }
  return typeof value === 'number' ? printedValue(value) : undefined;
}

/** Letters of the equation that can be measured in the drawing. */
function lettersInDrawing({ entry, station }: NumberReference, shown: ReadonlySet<string>): readonly Letter[] {
  return Object.entries(LETTER_MEANINGS[entry] ?? {}).flatMap(([letter, { place }]): Letter[] => {
    if (place === undefined || !shown.has(letter)) return [];
    const [base = letter, sub] = letter.split('_');
    return [
      { base, ...(sub === undefined ? {} : { sub }), field: place, ...(station === undefined ? {} : { station }) },
    ];
  });
}
