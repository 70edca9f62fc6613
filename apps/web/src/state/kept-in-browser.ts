import { browserBox } from './browser-box.ts';
import { KeptTexts } from './kept-texts.ts';
import { tabName } from './tab-name.ts';

/** What a browser offers a page. */
export interface BrowserParts {
  readonly local: () => Storage;
  readonly session: () => Storage;
  readonly events: () => EventTarget;
}

interface Listening {
  /** Another tab removed something that is kept here; null: everything. */
  readonly onRemoved: (key: string | null) => void;
  /** The person comes back to this tab, or the connection does. */
  readonly onReturn: () => void;
}

/**
 * What this browser keeps, and what it tells a tab about the others.
 *
 * @param parts - of the browser
 * @param listening - who wants to hear
 * @returns the texts that are kept
 */
export function keptInBrowser({ local, session, events }: BrowserParts, listening: Listening): KeptTexts {
  const target = events();
  const texts = new KeptTexts(browserBox(local), tabName(browserBox(session), target));
  target.addEventListener('storage', (event) => {
    const { key, newValue } = event as StorageEvent;
    if (newValue === null) listening.onRemoved(key);
  });
  target.addEventListener('focus', listening.onReturn);
  target.addEventListener('online', listening.onReturn);
  return texts;
}
