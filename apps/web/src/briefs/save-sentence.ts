import { KEEPING_WORDS, type KeptThing } from '@fillwright/words/en';
import type { SaveState } from '../state/index.ts';

/**
 * What is known of a document on the server, in words.
 *
 * @param save - what is known
 * @param about - which of the two documents, and whether this browser holds what the server has not got
 * @returns what happened, what is kept, and what to do
 */
export function saveSentence(
  save: SaveState,
  { thing, isKeptHere }: { readonly thing: KeptThing; readonly isKeptHere: boolean },
): string {
  const words = KEEPING_WORDS;
  switch (save.kind) {
    case 'kept':
      return words.kept(save.version);
    case 'pending':
      return isKeptHere ? words.pending(save.version) : words.pendingNowhere(thing);
    case 'saving':
      return words.saving;
    case 'offline':
      return isKeptHere ? words.offline : words.offlineNowhere(thing);
    case 'trouble':
      return isKeptHere ? words.trouble(thing, save.why) : words.troubleNowhere(thing, save.why);
    case 'refused':
      return isKeptHere ? words.refused(thing, save.why) : words.refusedNowhere(thing, save.why);
    case 'conflict':
      return words.conflictShort;
  }
}
