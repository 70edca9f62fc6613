import type { Quantity } from '@fillwright/engine/quantity';

/** Station counted from 1: no unit. */
type Station = number;
/** Place in a list, from 0: no unit. */
type Index = number;
/** Place in the ranking, from 1: no unit. */
type Rank = number;
/** Slot and number of a part in stock: `disc:D66-160`. */
type PartName = string;
type ShellSize = string;
/** Code of a measurement, as `halvedBy` has it. */
type Measurement = string;

/**
 * Every number of the bench that opens, by name. `mass:2` is the mass when station 2 is left, `pass:0` the first test of
 * the route, `substance:1` the second substance of the target.
 */
export type NumberKey =
  | `${'mass' | 'reached' | 'density' | 'force' | 'pressure' | 'scale' | 'gain'}:${Station}`
  | 'mass'
  | 'mean'
  | 'density'
  | `slug-${'length' | 'width' | 'dead' | 'dead-volume' | 'proud' | 'longest' | 'springback' | 'free' | 'axis' | 'rim'}`
  | `part:${PartName}`
  | `largest:${ShellSize}`
  | 'loose'
  | `outside-${'means' | 'capsules'}`
  | 'set-up'
  | 'spread'
  | `${'limit' | 'gross'}-${'mean' | 'alert' | 'action'}-${'low' | 'high'}`
  | `first-${'net' | 'gross'}-${'low' | 'high'}`
  | 'half-width'
  | `narrowed:${Measurement}`
  | 'tare-error'
  | 'shell-blur'
  | `${'pass' | 'acceptance' | 'content-acceptance'}:${Index}`
  | `${'substance' | 'content'}:${Index}`
  | 'target'
  | 'diluent'
  | 'flow-index'
  | 'hausner';

/** Where the value of an input comes from. */
export interface InputOrigin {
  /** What is known of it, with its basis; left out where a value is simply given. */
  readonly quantity?: Quantity;
  /** The quantity is that of another number, from which this one was solved: its interval is not this one's. */
  readonly isSolved?: true;
  /** What it rests on where no quantity says it. */
  readonly basis?: Quantity['basis'];
  /** Key of the uncertain parameter behind it: its share of the width stands there. */
  readonly parameter?: string;
  /** Another number of the page that it is; opens that one. */
  readonly number?: NumberKey;
  /** A few words: `disc D66-155`, `set at the machine`, `dossier`. */
  readonly words?: string;
}

/** A number on the page, and how the catalogue computes it. Plain data. */
export interface NumberReference {
  /** With a key the panel follows the levers; without one it shows the reference as it was. */
  readonly key?: NumberKey;
  /** Catalogue id; one that the catalogue does not know is said so. */
  readonly entry: string;
  /** Inputs by key of the entry. */
  readonly inputs: Readonly<Record<string, unknown>>;
  /** Key of the output that the number is; `cpk.low_ratio` in a group. */
  readonly output: string;
  /** Place in the output's list, from 0. */
  readonly item?: number;
  /** What the number is, after value and unit: `after station 2`. */
  readonly title: string;
  readonly station?: Station;
  /** The number as the page has it, in the unit of the output: recomputing must give it. */
  readonly value?: number;
  /** Unit where there is no entry to say it, or where it says only "of the data". */
  readonly unit?: string;
  /** What each item of a list is, by key of the input: then every item has a row of its own. */
  readonly items?: Readonly<Record<string, readonly string[]>>;
  /** A difference: it stands with its sign. */
  readonly isChange?: true;
  /** Where the page shows something else than the entry computes, what that is. */
  readonly remark?: string;
  readonly origins?: Readonly<Record<string, InputOrigin>>;
  /** Other numbers of the page that it is made from and that are no inputs of the entry. */
  readonly from?: readonly NumberKey[];
  /** Values of letters of the equation that are no inputs, as `symbolText` spells them. */
  readonly letters?: Readonly<Record<string, number>>;
}

/** A number of another set-up of the ranking than the one that is drawn. */
export interface NumberOfRank {
  readonly key: NumberKey;
  readonly rank: Rank;
}

/** What can be opened, by key. */
export type NumberReferences = Readonly<Partial<Record<NumberKey, NumberReference>>>;

/** A letter of the equation that is open, to be drawn where it is measured. */
export interface Letter {
  /** One letter, Greek included. */
  readonly base: string;
  /** Subscript, if any. */
  readonly sub?: string;
  /** What is measured there. */
  readonly field: LetterPlace;
  readonly station?: Station;
}

/** Places of the drawing that a letter can stand at; those with a station are per station. */
export type LetterPlace =
  | 'feed-density'
  | 'refill'
  | 'bore-area'
  | 'bore-diameter'
  | 'disc-height'
  | 'pin-depth'
  | 'reached-depth'
  | 'mass-before'
  | 'mass'
  | 'force'
  | 'slug-length'
  | 'slug-width'
  | 'dead-space'
  | 'proud'
  | 'body-radius'
  | 'cap-radius'
  | 'cap-headroom'
  | 'body-length';
