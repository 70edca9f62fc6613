import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import type { SaveState } from '../../state/index.ts';

/** @returns what is known of the text on the server, in words */
export function saveWords(save: SaveState): string {
  const words = BRIEF_PAGE_WORDS.save;
  switch (save.kind) {
    case 'kept':
      return words.kept(save.version);
    case 'pending':
      return words.pending(save.version);
    case 'saving':
    case 'offline':
    case 'conflict':
      return words[save.kind];
  }
}
