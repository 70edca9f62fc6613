import type { ShellRecord } from '@fillwright/engine/shells';
import { parseWith, type Parsed, type SourceDocument } from '#faults';
import { shellConflicts } from './shell-conflicts.ts';
import { shellSchema } from './shell-schema.ts';

/**
 * Reads a shell file from plain data.
 *
 * @param document - the data, and how its values were written
 * @returns the record of the shell, or everything that is wrong with it
 */
export function parseShell(document: SourceDocument): Parsed<ShellRecord> {
  return parseWith(shellSchema, document, shellConflicts);
}
