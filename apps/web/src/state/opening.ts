import type { DocumentVersion } from '@fillwright/contract/documents';
import { openChoice } from './design-document.ts';
import { newestVersion } from './documents-client.ts';
import { keptText, type KeptText } from './kept-text.ts';
import type { Choice, SaveState } from './workbench-state.ts';

/** What is there when a product is opened: on the server, and in this browser. */
export interface Opening {
  readonly id: string;
  /** Newest version known of the brief; 0: none. */
  readonly version: number;
  readonly storedText: string;
  /** The text to go on with. */
  readonly text: string;
  readonly designVersion: number;
  readonly designText: string;
  readonly choice?: Choice;
  /** A text kept here was based on an older version than the server has. */
  readonly conflict?: Extract<SaveState, { kind: 'conflict' }>;
}

/**
 * Looks up a product on the server and what of it is kept in this browser.
 *
 * @param id - of the product
 * @returns both, and which text to go on with
 * @throws ServerProblem when there is no such product, or no server and nothing kept here
 */
export async function openingOf(id: string): Promise<Opening> {
  const mine = keptText(id);
  const newest = await newestVersion('brief', id).catch((error: unknown) => {
    if (mine) return undefined;
    throw error;
  });
  const design = await openChoice(id);
  return {
    id,
    ...briefOf(mine, newest),
    designVersion: design?.version ?? 0,
    designText: design?.text ?? '',
    ...(design ? { choice: design.choice } : {}),
  };
}

function briefOf(
  mine: KeptText | undefined,
  newest: DocumentVersion | undefined,
): Pick<Opening, 'version' | 'storedText' | 'text' | 'conflict'> {
  if (!newest) return { version: mine?.basedOn ?? 0, storedText: '', text: mine?.text ?? '' };
  const { version, text: storedText } = newest;
  if (!mine || mine.text === storedText) return { version, storedText, text: storedText };
  const isBehind = mine.basedOn < version;
  const conflict = { kind: 'conflict', current: newest, yours: mine.text } as const;
  return { version, storedText, text: mine.text, ...(isBehind ? { conflict } : {}) };
}
