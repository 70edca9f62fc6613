import { readdir, readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { readBrief } from '@fillwright/contract/files';
import { EXAMPLES_FOLDER } from './examples-folder.ts';

/** A brief that comes with the program. */
export interface Example {
  /** Name of its file. */
  readonly name: string;
  /** Name of its product. */
  readonly title: string;
}

/**
 * The briefs that come with the program.
 *
 * @returns them in the order of their names
 */
export async function listExamples(): Promise<readonly Example[]> {
  const names = (await readdir(EXAMPLES_FOLDER)).filter((name) => name.endsWith('.brief.yaml')).sort();
  return Promise.all(names.map(async (name) => ({ name, title: await titleOf(name) })));
}

async function titleOf(name: string): Promise<string> {
  const readText = (path: string): Promise<string> => readFile(new URL(path, EXAMPLES_FOLDER), 'utf8');
  const read = await readBrief({ path: name, readText });
  return read.ok ? read.brief.product.name : basename(name, '.brief.yaml');
}
