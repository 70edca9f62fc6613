import { browserBox } from './browser-box.ts';

const KEY = 'fillwright.person';
const box = browserBox(() => localStorage);
/** For browsers that keep nothing: the name lasts as long as the page. */
let ofThisPage = '';
/** Until a name is typed; versions are unsigned either way. */
export const NO_NAME = 'no name given';

/** Name typed once in this browser. @returns the name, or `no name given` */
export function personName(): string {
  return box.get(KEY) ?? (ofThisPage || NO_NAME);
}

/** Keeps the name for this browser; an empty one is forgotten. */
export function rememberPerson(name: string): void {
  ofThisPage = name.trim().slice(0, 80);
  if (ofThisPage === '') box.remove(KEY);
  else box.set(KEY, ofThisPage);
}
