import { exampleText } from './documents-client.ts';
import type { BriefState } from './workbench-state.ts';

/** Name under which faults of the brief's own text come back. */
const BRIEF_FILE = 'brief';
const SEED = 1;
/** Files that were read once: a brief can be read again while the server does not answer. */
const known = new Map<string, string>();

/**
 * Reads the text of a brief in the browser; the file reader is loaded when it is first needed.
 *
 * @param text - YAML
 * @returns the brief with everything it names, or its faults; files beside it are looked for among the examples
 */
export async function readText(text: string): Promise<BriefState> {
  const { readBrief } = await import('@fillwright/contract/files');
  const read = await readBrief({
    path: BRIEF_FILE,
    readText: (path) => (path === BRIEF_FILE ? Promise.resolve(text) : fileText(path)),
  });
  if (!read.ok) return { kind: 'faulty', faults: read.faults };
  const { brief, filler, shells, notices } = read;
  return { kind: 'sound', input: { brief, filler, shells, seed: SEED }, notices };
}

async function fileText(path: string): Promise<string> {
  const text = known.get(path) ?? (await exampleText(path));
  known.set(path, text);
  return text;
}
