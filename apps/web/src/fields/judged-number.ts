import { FIELD_WORDS } from '@fillwright/words/en';
import { isWithin, type NumberRange } from './number-range.ts';
import { parseTypedNumber, type TypedNumber } from './parse-typed-number.ts';
import { unitText } from './unit-text.ts';

/** What a number field takes. */
export interface NumberKind {
  /** As the catalogue spells it; `1` for a pure number. */
  readonly unit: string;
  readonly range: NumberRange;
  /** A count. */
  readonly isWhole?: boolean;
}

/**
 * Reads a typed text and judges it, in words.
 *
 * @param text - as it was typed
 * @param kind - what the field takes
 * @returns what was typed, and one sentence where it is refused or lies out of range; an empty field is fine here
 */
export function judgedNumber(
  text: string,
  kind: NumberKind,
): { readonly typed: TypedNumber; readonly sentence: string | undefined } {
  const typed = parseTypedNumber(text, kind);
  return { typed, sentence: sentenceFor(typed, { ...kind, text: text.trim() }) };
}

function sentenceFor(
  typed: TypedNumber,
  { text, unit, range, isWhole }: NumberKind & { text: string },
): string | undefined {
  if (typed.kind === 'empty') return undefined;
  if (typed.kind === 'refused') return FIELD_WORDS.refused[typed.refusal](text, unitText(unit));
  if (isWhole === true && !Number.isInteger(typed.value)) return FIELD_WORDS.notWhole(text);
  return isWithin(typed.value, range) ? undefined : FIELD_WORDS.outOfRange(text, { unit, ...range });
}
