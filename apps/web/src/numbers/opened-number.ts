import { computeEntry, DomainError, type Entry, type Field } from '@fillwright/engine/catalogue';
import { findEntry } from '@fillwright/engine/register';
import { domainErrorSentence, faultSentence } from '@fillwright/words/en';
import { shownEquation, type ShownEquation } from './equation/shown-equation.ts';
import type { NumberReference } from './number-reference.ts';
import { numberText } from './number-text.ts';
import { unitOfData } from './unit-of-data.ts';

/** A number that is open, recomputed through the catalogue. */
export interface OpenedNumber {
  readonly reference: NumberReference;
  readonly entry: Entry | undefined;
  /** Value with unit. */
  readonly text: string;
  readonly unit: string;
  readonly equation: ShownEquation | undefined;
  /** What else the entry gives. */
  readonly others: readonly { readonly title: string; readonly text: string }[];
  /** The catalogue refuses the inputs, as a sentence. */
  readonly refusal?: string;
  /** The page shows something else than the catalogue gives: what the page shows. */
  readonly differs?: string;
}

/** Recomputing may round otherwise than the page did, no more. */
const SAME = { relative: 1e-9, absolute: 1e-12 };

/**
 * Recomputes a number of the page through the catalogue.
 *
 * @param reference - the number
 * @returns value, equation and other outputs; without an entry only what the page knows
 */
export function openedNumber(reference: NumberReference): OpenedNumber {
  const entry = findEntry(reference.entry);
  const pageText = reference.value === undefined ? '' : textOf(reference, reference.value, entry);
  const unit = unitOf(reference, entry);
  if (!entry) return { reference, entry, text: pageText, unit, equation: undefined, others: [] };
  const computed = computedOf(entry, reference);
  if (typeof computed === 'string')
    return { reference, entry, text: pageText, unit, equation: undefined, others: [], refusal: computed };
  const got = itemOf(outputAt(computed, reference.output), reference.item);
  const isOther = reference.value !== undefined && !isSame(got, reference.value);
  return {
    ...{ reference, entry, unit },
    text: typeof got === 'number' ? textOf(reference, got, entry) : pageText,
    equation: shownEquation(reference, entry, computed),
    others: otherOutputs(entry, reference, computed),
    ...(isOther ? { differs: pageText } : {}),
  };
}

function computedOf(entry: Entry, { inputs }: NumberReference): Readonly<Record<string, unknown>> | string {
  try {
    const computed = computeEntry(entry, inputs);
    return computed.ok ? computed.outputs : computed.faults.map(faultSentence).join(' ');
  } catch (error) {
    if (error instanceof DomainError) return domainErrorSentence(error.code, error.facts);
    throw error;
  }
}

/** NaN is the same as nothing. */
function isSame(got: unknown, value: number): boolean {
  return typeof got === 'number' && Math.abs(got - value) <= SAME.relative * Math.abs(value) + SAME.absolute;
}

/** An output, or a part of one that is a group: `cpk.low_ratio`. */
function outputAt(outputs: Readonly<Record<string, unknown>>, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((found, key) => (found as Readonly<Record<string, unknown>> | undefined)?.[key], outputs);
}

function fieldAt(fields: readonly Field[], path: string): Field | undefined {
  const [first, ...rest] = path.split('.');
  const field = fields.find(({ key }) => key === first);
  if (rest.length === 0) return field;
  return field?.kind === 'group' ? fieldAt(field.fields, rest.join('.')) : undefined;
}

function itemOf(value: unknown, item: number | undefined): unknown {
  return item === undefined ? value : (value as readonly unknown[] | undefined)?.[item];
}

function unitOf({ output, unit }: NumberReference, entry: Entry | undefined): string {
  const field = fieldAt(entry?.outputs ?? [], output);
  return field && 'unit' in field ? unitOfData(field.unit, unit) : (unit ?? '1');
}

function textOf(reference: NumberReference, value: number, entry: Entry | undefined): string {
  const { output, entry: id } = reference;
  const text = numberText(value, { unit: unitOf(reference, entry), key: output, entry: id });
  return reference.isChange && value > 0 ? `+${text}` : text;
}

function otherOutputs(
  entry: Entry,
  { output, unit }: NumberReference,
  computed: Readonly<Record<string, unknown>>,
): OpenedNumber['others'] {
  return entry.outputs.flatMap((field: Field) => {
    const value = computed[field.key];
    if (field.key === output || typeof value !== 'number' || !('unit' in field)) return [];
    return [
      {
        title: field.title,
        text: numberText(value, { unit: unitOfData(field.unit, unit), key: field.key, entry: entry.id }),
      },
    ];
  });
}
