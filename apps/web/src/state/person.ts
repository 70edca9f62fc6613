const KEY = 'fillwright.person';
/** Until a name is typed; versions are unsigned either way. */
export const NO_NAME = 'no name given';

/** Name typed once in this browser. @returns the name, or `no name given` */
export function personName(): string {
  return localStorage.getItem(KEY) ?? NO_NAME;
}

/** Keeps the name for this browser; an empty one is forgotten. */
export function rememberPerson(name: string): void {
  const trimmed = name.trim().slice(0, 80);
  if (trimmed === '') localStorage.removeItem(KEY);
  else localStorage.setItem(KEY, trimmed);
}
