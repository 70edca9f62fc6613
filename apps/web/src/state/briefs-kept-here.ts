import { browserBox } from './browser-box.ts';
import { KeptTexts } from './kept-texts.ts';
import { THIS_BROWSER } from './this-browser.ts';

/** A brief of which this browser holds what the server has not got. */
export interface BriefKeptHere {
  readonly id: string;
  readonly text: string;
}

/** This page only looks: no text is kept under this name. */
const LOOKING = 'looking';

/** @returns every brief that is kept in this browser, by whatever tab */
export function briefsKeptHere(): readonly BriefKeptHere[] {
  const texts = new KeptTexts(browserBox(THIS_BROWSER.local), LOOKING);
  return texts.ids('brief').flatMap((id) => {
    const kept = texts.look({ kind: 'brief', id });
    return kept ? [{ id, text: kept.text }] : [];
  });
}
