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
 * @returns the data for the engine, or the faults, at most one for each field and code
 */
export function parseWith<T>(
  schema: z.ZodType<T>,
  document: SourceDocument,
  conflicts: (raw: unknown) => readonly InputFault[],
): Parsed<T> {
  const parsed = schema.safeParse(document.value);
  const faults = parsed.success ? [] : faultsOfIssues(parsed.error.issues, document);
  for (const conflict of conflicts(document.value))
    if (!faults.some(({ code, field }) => field === conflict.field && code === conflict.code)) faults.push(conflict);
  return parsed.success && faults.length === 0 ? { ok: true, value: parsed.data } : { ok: false, faults };
}
