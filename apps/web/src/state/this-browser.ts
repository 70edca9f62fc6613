import type { BrowserParts } from './kept-in-browser.ts';

/** The browser that the page is in. */
export const THIS_BROWSER: BrowserParts = {
  local: () => localStorage,
  session: () => sessionStorage,
  events: () => window,
};
