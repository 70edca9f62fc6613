import type { InputFault } from '@fillwright/engine/catalogue';
import type { z } from 'zod';
import { faultsOfIssues } from './faults-of-issues.ts';
import type { SourceDocument } from './source-document.ts';

/** What became of a document: the engine's data, or everything that is wrong with it. */
export type Parsed<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly faults: readonly InputFault[] };

/**
 * Reads a document with its schema and with the rules between its values. The rules are checked whatever the schema
 * finds, so that a person sees everything at once.
 *
 * @param schema - the form; the message of an issue says what is allowed
 * @param document - the document
 * @param conflicts - the rules between values, on data of any form
 * @returns the data for the engine, or the faults; where both find something in one field, the rule says it
 */
export function parseWith<T>(
  schema: z.ZodType<T>,
  document: SourceDocument,
  conflicts: (raw: unknown) => readonly InputFault[],
): Parsed<T> {
  const parsed = schema.safeParse(document.value);
  const faults = parsed.success ? [] : faultsOfIssues(parsed.error.issues, document);
  const found = conflicts(withoutFaulty(document.value, faults));
  const all = [...faults.filter(({ field }) => !found.some((conflict) => conflict.field === field)), ...found];
  return parsed.success && all.length === 0 ? { ok: true, value: parsed.data } : { ok: false, faults: all };
}

/** A value that is refused by itself contradicts nothing: null stands in its place. */
function withoutFaulty(raw: unknown, faults: readonly InputFault[]): unknown {
  return faults
    .filter(({ code }) => code !== 'missing' && code !== 'unknown-field' && code !== 'wrong-length')
    .reduce((value, { field }) => withNull(value, field.split('.')), raw);
}

function withNull(value: unknown, [key, ...rest]: readonly string[]): unknown {
  if (key === undefined) return null;
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return value;
  const copy = Array.isArray(value) ? [...(value as unknown[])] : { ...value };
  return Object.assign(copy, { [key]: withNull((value as Record<string, unknown>)[key], rest) });
}
