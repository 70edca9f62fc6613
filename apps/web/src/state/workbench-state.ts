import type { SearchInput, Candidate, CandidateDetails, Design } from '@fillwright/engine/design';
import type { DocumentNotice } from '@fillwright/engine/design';
import type { FileFault } from '@fillwright/engine/catalogue';
import type { Settings } from '@fillwright/engine/dosing';
import type { DocumentVersion } from '@fillwright/contract/documents';
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

/** What is known of the text on the server. */
export type SaveState =
  | { readonly kind: 'kept'; readonly version: number }
  | { readonly kind: 'pending' | 'saving'; readonly version: number }
  /** The server does not answer: the text is kept in this browser and sent when it does. */
  | { readonly kind: 'offline'; readonly version: number }
  /** Somebody else saved a newer version: both texts, the person chooses. */
  | { readonly kind: 'conflict'; readonly current: DocumentVersion; readonly yours: string };

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
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}
