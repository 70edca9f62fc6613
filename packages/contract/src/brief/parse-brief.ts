import type { Brief } from '@fillwright/engine/design';
import { parseWith, type Parsed, type SourceDocument } from '#faults';
import { briefConflicts } from './brief-conflicts.ts';
import { briefSchema } from './brief-schema.ts';
import type { OwnShells } from './shell-conflicts.ts';

/**
 * Reads a brief from plain data.
 *
 * @param document - the data, and how its values were written
 * @param own - records of the shells that the brief names by file
 * @returns the brief, or everything that is wrong with it
 */
export function parseBrief(document: SourceDocument, own: OwnShells = new Map()): Parsed<Brief> {
  return parseWith(briefSchema, document, (raw) => briefConflicts(raw, own));
}
