import { createContext } from 'react';

/** Station counted from 1. */
type Station = number;

/** Numbers of the drawing that can be opened, by name. */
export type NumberName =
  | `${'mass' | 'density' | 'force' | 'gain'}:${Station}`
  | 'density'
  | `slug-${'length' | 'springback' | 'longest' | 'dead' | 'dead-volume' | 'free' | 'axis' | 'rim'}`
  /** A part in stock by slot and number, the heaviest slug by size of the shell. */
  | `part:${string}`
  | `largest:${string}`;

/** A letter of an equation, drawn where it is measured. */
export interface DrawnLetter {
  readonly base: string;
  readonly sub?: string;
  /** What is measured there; a place that a drawing does not have is left out. */
  readonly field: string;
  readonly station?: Station;
}

/** What happens when a number of the drawing is opened, and which letters stand in it meanwhile. */
export interface Opening {
  readonly open: (number: NumberName) => void;
  readonly letters: readonly DrawnLetter[];
}

/** Without a provider the numbers of a drawing are plain text, as on paper. */
export const OpeningContext = createContext<Opening | undefined>(undefined);
