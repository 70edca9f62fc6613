import { parseFiller } from '#filler';
import type { Filler } from '@fillwright/engine/fillers';
import { readDocument, type DocumentRead, type FileToRead } from './read-document.ts';

/**
 * Reads a filler file.
 *
 * @param input - the file
 * @returns the filler, or all faults with their places
 */
export function readFiller(input: FileToRead): Promise<DocumentRead<Filler>> {
  return readDocument(input, parseFiller);
}
