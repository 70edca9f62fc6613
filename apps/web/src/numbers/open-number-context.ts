import { createContext, useContext } from 'react';
import type { Letter, NumberKey, NumberOfRank, NumberReference } from './number-reference.ts';

/** A number of the set-up that is drawn, of another one, or one as it was. */
export type Opened = NumberKey | NumberOfRank | NumberReference;

/** Which number stands open, and how to open another. */
export interface OpenNumber {
  /** The number that is open; left out when none is. */
  readonly current?: Opened;
  /** How many steps back there are until it closes; 0 when nothing is open. */
  readonly depth: number;
  /** Opens a number in place, on top of the one that is open; by key it follows the levers. */
  readonly open: (what: Opened) => void;
  /** One step back; from the first number it closes. */
  readonly back: () => void;
  /** Closes, and gives the focus back to where the first number was opened. */
  readonly close: () => void;
  /** Letters of the open equation that can be measured in the drawing. */
  readonly letters: readonly Letter[];
}

/** @returns name of a number, as its place on the page has it */
export function nameOf(what: Opened): string {
  return typeof what === 'string' ? what : (what.key ?? ('title' in what ? what.title : ''));
}

const nothing = (): undefined => undefined;

export const OpenNumberContext = createContext<OpenNumber>({
  ...{ depth: 0, letters: [] },
  ...{ open: nothing, back: nothing, close: nothing },
});

/** Lets the panel, which knows the equation, hand its letters to the drawing. */
export const LettersContext = createContext<(letters: readonly Letter[]) => void>(nothing);

/** The number that stands open on this page; outside of a provider nothing opens. */
export function useOpenNumber(): OpenNumber {
  return useContext(OpenNumberContext);
}
