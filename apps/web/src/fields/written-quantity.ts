import type { Quantity } from '@fillwright/engine/quantity';
import { plainNumber } from '@fillwright/words/numbers';

/** A number with its spread as a brief writes it: measured n times, or learned from weights. A text is what was refused. */
export interface WrittenSpread {
  readonly mean?: number | string;
  readonly sd?: number | string;
  readonly n?: number | string;
  readonly method?: string;
  readonly date?: string;
  readonly from?: string;
}

/**
 * A quantity as a brief writes it: one measurement, with its spread, `guess`, nothing, or a text that is no number and
 * is kept until it is corrected.
 */
export type WrittenQuantity = number | WrittenSpread | string | undefined;

/** What a number rests on; a full, half and open circle. */
export type SourceMarkKind = Quantity['basis'];

const KEYS = ['mean', 'sd', 'n', 'method', 'date', 'from'] as const;

/** @returns the written form of anything that stands in a document; what cannot be shown in a number field is left out */
export function writtenQuantity(raw: unknown): WrittenQuantity {
  if (typeof raw === 'number' || typeof raw === 'string') return raw;
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return undefined;
  const entries = Object.entries(raw).filter(
    ([key, value]) => KEYS.some((known) => known === key) && (typeof value === 'number' || typeof value === 'string'),
  );
  return Object.fromEntries(entries);
}

/** @returns the written form of a quantity of the engine; a guess is nothing written */
export function writtenOf(quantity: Quantity): WrittenQuantity {
  if (quantity.basis === 'guess') return undefined;
  if (quantity.basis === 'measured' && quantity.sdAssumed) return quantity.mean;
  const { basis: _, ...written } = quantity;
  return writtenQuantity(written);
}

export function isSpread(value: WrittenQuantity): value is WrittenSpread {
  return typeof value === 'object';
}

/** @returns what a written quantity rests on */
export function markOf(value: WrittenQuantity): SourceMarkKind {
  if (value === undefined || value === 'guess') return 'guess';
  return isSpread(value) && value.from !== undefined ? 'calibrated' : 'measured';
}

/** Text of the number in its field; empty where none is given. `source` is how the file writes it: `0.50`. */
export function numberText(value: WrittenQuantity, source?: string): string {
  const number = isSpread(value) ? value.mean : value;
  if (number === undefined || number === 'guess') return '';
  if (typeof number === 'string') return number;
  if (source !== undefined && Number(source) === number) return source;
  return plainNumber(number, { upToSignificantDigits: 15 });
}

/**
 * The written form after another number was typed: of values measured n times it is the mean, and the rest stays; what
 * was learned from weights is not learned any more, so one measurement is left.
 *
 * @param value - as it was
 * @param number - the number typed
 * @returns the written form
 */
export function withNumber(value: WrittenQuantity, number: number | string): WrittenQuantity {
  return isSpread(value) && value.from === undefined ? { ...value, mean: number } : number;
}
