import { parseShell } from '#shell';
import type { ShellRecord } from '@fillwright/engine/shells';
import { readDocument, type DocumentRead, type FileToRead } from './read-document.ts';

/**
 * Reads a shell file.
 *
 * @param input - the file
 * @returns the figures of the shell, or all faults with their places
 */
export function readShell(input: FileToRead): Promise<DocumentRead<ShellRecord>> {
  return readDocument(input, parseShell);
}
