import type { BrowserBox } from './browser-box.ts';

const KEY = 'fillwright.tab';

/**
 * A name that a tab keeps when it is reloaded and that no other tab has. It is taken out of the box while the page is
 * there: a copy of the tab, which gets a copy of its box, then finds none and makes its own.
 *
 * @param session - what the browser keeps for one tab
 * @param events - tells when the page goes and comes back
 * @returns the name
 */
export function tabName(session: BrowserBox, events: EventTarget): string {
  const name = session.get(KEY) ?? newName();
  session.remove(KEY);
  events.addEventListener('pagehide', () => session.set(KEY, name));
  events.addEventListener('pageshow', () => {
    session.remove(KEY);
  });
  return name;
}

/** `randomUUID` is only there on pages that came by HTTPS or from this machine. */
function newName(): string {
  return [...crypto.getRandomValues(new Uint32Array(2))].map((part) => part.toString(36)).join('');
}
