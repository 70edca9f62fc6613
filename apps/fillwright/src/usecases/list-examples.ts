import { readdir, readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { readBrief, readFiller } from '@fillwright/contract/files';
import { EXAMPLES_FOLDER } from './examples-folder.ts';

/** A brief or a filler that comes with the program. */
export interface Example {
  readonly kind: 'brief' | 'filler';
  /** Name of its file. */
  readonly name: string;
  /** Name of its product, or of the filler. */
  readonly title: string;
}

/**
 * The briefs and fillers that come with the program.
 *
 * @returns them in the order of their names
 */
export async function listExamples(): Promise<readonly Example[]> {
  const names = (await readdir(EXAMPLES_FOLDER)).sort();
  const examples = names.map(async (name): Promise<Example | undefined> => {
    if (name.endsWith('.brief.yaml')) return { kind: 'brief', name, title: await productOf(name) };
    return name.endsWith('.filler.yaml') ? { kind: 'filler', name, title: await fillerOf(name) } : undefined;
  });
  return (await Promise.all(examples)).filter((example) => example !== undefined);
}

const readText = (path: string): Promise<string> => readFile(new URL(path, EXAMPLES_FOLDER), 'utf8');

async function productOf(name: string): Promise<string> {
  const read = await readBrief({ path: name, readText });
  return read.ok ? read.brief.product.name : basename(name, '.brief.yaml');
}

async function fillerOf(name: string): Promise<string> {
  const read = await readFiller({ path: name, readText });
  return read.ok ? read.value.name : basename(name, '.filler.yaml');
}
