import { valueAt } from '#written';
import type { SourceDocument } from './source-document.ts';

/** Longest value that is repeated to a person. */
const LONGEST = 80;

/**
 * A value as the person wrote it, for a fault.
 *
 * @param document - the document
 * @param path - where
 * @returns the text as `value`; nothing where nothing is written, or where it is no scalar
 */
export function written(document: SourceDocument, path: readonly PropertyKey[]): { value?: string } {
  const value = valueAt(document.value, path);
  const text = document.textAt?.(path) ?? plain(value);
  return text === undefined ? {} : { value: text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text };
}

function plain(value: unknown): string | undefined {
  switch (typeof value) {
    case 'string':
      return value;
    case 'number':
    case 'boolean':
      return String(value);
    case 'object':
      return value === null ? undefined : Array.isArray(value) ? 'a list' : 'a mapping';
    default:
      return undefined;
  }
}
