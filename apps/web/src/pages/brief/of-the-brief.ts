import type { FileFault } from '@fillwright/engine/catalogue';

/** Name under which the state reads the text of the brief itself; every other name is a file beside it. */
const BRIEF_FILE = 'brief';

/** @returns whether a fault stands in the brief's own text */
export function ofTheBrief({ file }: FileFault): boolean {
  return file === BRIEF_FILE;
}
