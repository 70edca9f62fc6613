import { readdir, readFile } from 'node:fs/promises';
import { EXAMPLES_FOLDER } from './examples-folder.ts';

/**
 * Text of a file that comes with the program.
 *
 * @param name - its name, as the folder lists it
 * @returns the text, or undefined when there is no such file
 */
export async function exampleText(name: string): Promise<string | undefined> {
  const names = await readdir(EXAMPLES_FOLDER);
  return names.includes(name) ? readFile(new URL(name, EXAMPLES_FOLDER), 'utf8') : undefined;
}
