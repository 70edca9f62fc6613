import type { Filler } from '@fillwright/engine/fillers';
import { parseWith, type Parsed, type SourceDocument } from '#faults';
import { fillerConflicts } from './filler-conflicts.ts';
import { fillerSchema } from './filler-schema.ts';

/**
 * Reads a filler from plain data.
 *
 * @param document - the data, and how its values were written
 * @returns the filler, or everything that is wrong with it
 */
export function parseFiller(document: SourceDocument): Parsed<Filler> {
  const parsed = parseWith(fillerSchema, document, fillerConflicts);
  if (!parsed.ok) return parsed;
  const { format, ...filler } = parsed.value;
  return { ok: true, value: filler };
}
