import type { FileDocument } from '@fillwright/contract/documents';
import type { FileFault } from '@fillwright/engine/catalogue';
import { fileName } from './file-name.ts';

/**
 * Everything that is wrong with the text of a filler or a shell; the file reader is loaded when it is first needed.
 *
 * @param document - what the text is of
 * @param text - YAML
 * @returns all faults with their places; none when it is in order
 */
export async function faultsOfFile(document: FileDocument, text: string): Promise<readonly FileFault[]> {
  const { readFiller, readShell } = await import('@fillwright/contract/files');
  const input = { path: fileName(document), readText: () => Promise.resolve(text) };
  const read = document.kind === 'filler' ? await readFiller(input) : await readShell(input);
  return read.ok ? [] : read.faults;
}
