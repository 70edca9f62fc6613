import type { SearchInput, Candidate, CandidateDetails, Design } from '@fillwright/engine/design';
import type { DocumentNotice } from '@fillwright/engine/design';
import type { FileFault } from '@fillwright/engine/catalogue';
import type { Settings } from '@fillwright/engine/dosing';
import type { DocumentVersion } from '@fillwright/contract/documents';
import type { ValuePath } from '@fillwright/contract/files';
import type { NamedFile } from './named-file.ts';

/** The brief's text as read: a sound brief with everything it names, or everything that is wrong with it. */
export type BriefState =
  | { readonly kind: 'reading' }
  | ({ readonly kind: 'sound'; readonly input: SearchInput; readonly notices: readonly DocumentNotice[] } & WithFiles)
  | ({ readonly kind: 'faulty'; readonly faults: readonly FileFault[] } & WithFiles);

interface WithFiles {
  /** The fillers and shells that the brief names, as they were read; those that are not there are left out. */
  readonly files: readonly NamedFile[];
}

/** A filler or shell by its path in the brief, and the version of it; left out: the example of that name. */
export type RestedFile = Omit<NamedFile, 'text'>;

/** What is known of a document on the server. What it has not got is kept in this browser. */
export type SaveState =
  | { readonly kind: 'kept'; readonly version: number }
  | { readonly kind: 'pending' | 'saving'; readonly version: number }
  /** The server does not answer: sent again as soon as it does. */
  | { readonly kind: 'offline'; readonly version: number }
  /** The server answers that it cannot keep anything now, and why: sent again. */
  | { readonly kind: 'trouble'; readonly version: number; readonly why: string }
  /** The server does not take this text, and why: sent again when it is another one. */
  | { readonly kind: 'refused'; readonly version: number; readonly why: string }
  /** Somebody else saved a newer version: both texts, the person chooses. */
  | { readonly kind: 'conflict'; readonly current: DocumentVersion; readonly yours: string };

/** What became of a version that was sent. */
export type SaveOutcome =
  | { readonly kind: 'kept' | 'offline' | 'conflict' | 'reason-needed' }
  | { readonly kind: 'trouble' | 'refused'; readonly why: string };

/** The two documents of a product. */
export type ProductKind = 'brief' | 'design';

/** Where the levers stand: a shell, a way of dosing, settings. */
export interface Choice {
  readonly size: string;
  readonly method: string;
  readonly settings: Settings;
}

/** Everything a page shows of one product. Immutable: every change is a new object. */
export interface WorkbenchState {
  /** Id of the brief document; left out before one is open. */
  readonly id?: string;
  readonly text: string;
  readonly brief: BriefState;
  readonly save: SaveState;
  /** The same of where the levers stand. */
  readonly choiceSave: SaveState;
  /** The fillers and shells that the kept design was computed from; the newest versions of them may be others. */
  readonly restedOn: readonly RestedFile[];
  /** Whether this browser holds what the server has not got; it may keep nothing. */
  readonly isKeptHere: boolean;
  /** Result of the search on the newest sound brief; the older one stays while the next is searched. */
  readonly design?: Design;
  readonly isSearching: boolean;
  readonly choice?: Choice;
  /** Computed at once with every move. */
  readonly candidate?: Candidate;
  /** Where the levers stood before the move that is under way: drawn as a thin line until it is let go. */
  readonly before?: Candidate;
  /** Interval, gains, outlook, first weights: from the worker, a moment later; the old ones stay, shown as pending. */
  readonly details?: CandidateDetails;
  readonly areDetailsPending: boolean;
  /** Why the settings could not be computed, as a sentence; the levers stay where they were. */
  readonly refusal?: string;
  /** Why nothing could be computed or read, as a sentence. */
  readonly failure?: string;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

/** The one store of the app: pages read `state`, and change it only through these. */
export interface Workbench {
  readonly state: () => WorkbenchState;
  readonly subscribe: (listener: () => void) => () => void;
  /** Opens a stored brief with the newest design choice on it. */
  readonly open: (id: string) => Promise<void>;
  /** Reads the files that the brief names once more: one of them was kept anew. */
  readonly reread: () => Promise<void>;
  /** Starts a new document from a text; resolves with its id once it is stored (or kept in this browser). */
  readonly create: (text: string) => Promise<string>;
  /** Replaces the whole text of the brief. What goes on in one line without a pause is one step of undo. */
  readonly setText: (text: string) => void;
  /** Changes one value of the brief's text, comments and layout kept; undefined removes the key. */
  readonly setValue: (path: ValuePath, value: unknown) => void;
  /** Puts the levers somewhere: `moving` while a drag is under way, `settled` when it is let go or a key stepped. */
  readonly move: (settings: Settings, phase: 'moving' | 'settled') => void;
  /** Takes a candidate of the ranking. */
  readonly take: (rank: number) => void;
  /** The design rests on the files as they are now: a draft follows. */
  readonly takeNewerFiles: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Saves brief and design choice under the person's name; a reason is needed when a saved one is superseded. */
  readonly saveDesign: (reason?: string) => Promise<SaveOutcome>;
  /** After a conflict: `mine` goes on top of the newer version, `theirs` replaces it here (mine stays in undo). */
  readonly resolve: (kind: ProductKind, side: 'mine' | 'theirs') => void;
}
