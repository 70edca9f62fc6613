import { browserBox } from './browser-box.ts';

const KEY = 'fillwright.weights';
const box = browserBox(() => localStorage);
let ofThisPage: string | undefined;

/** Id of the sheet of weights without a product: one for each browser, so that two people paste into two sheets. */
export function weightsId(): string {
  const kept = box.get(KEY);
  if (kept !== undefined && /^weights-[0-9a-f]{8}$/.test(kept)) return kept;
  ofThisPage ??= `weights-${newMarks()}`;
  box.set(KEY, ofThisPage);
  return ofThisPage;
}

function newMarks(): string {
  return [...crypto.getRandomValues(new Uint8Array(4))].map((octet) => octet.toString(16).padStart(2, '0')).join('');
}
