import { namedFile, type NamedFile } from './named-file.ts';
import type { BriefState } from './workbench-state.ts';

/** Name under which faults of the brief's own text come back. */
const BRIEF_FILE = 'brief';
const SEED = 1;

/**
 * Reads the text of a brief in the browser; the file reader is loaded when it is first needed.
 *
 * @param text - YAML
 * @returns the brief with everything it names, or its faults; files it names are looked for among those kept, then among the examples
 */
export async function readText(text: string): Promise<BriefState> {
  const { readBrief } = await import('@fillwright/contract/files');
  const files: NamedFile[] = [];
  const textOf = async (path: string): Promise<string> => {
    const found = await namedFile(path);
    files.push(found);
    return found.text;
  };
  const read = await readBrief({
    path: BRIEF_FILE,
    readText: (path) => (path === BRIEF_FILE ? Promise.resolve(text) : textOf(path)),
  });
  if (!read.ok) return { kind: 'faulty', faults: read.faults, files };
  const { brief, filler, shells, notices } = read;
  return { kind: 'sound', input: { brief, filler, shells, seed: SEED }, notices, files };
}
