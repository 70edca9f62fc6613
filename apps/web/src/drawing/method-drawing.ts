import type { Candidate, CandidateDetails, Place, SearchInput } from '@fillwright/engine/design';
import type { Settings } from '@fillwright/engine/dosing';
import type { ComponentType } from 'react';
import type { DrawnLetter } from './opening.ts';
import type { PlacedLetter } from './placed-letter.ts';

/** What a drawing shows: a set-up, and where it stood before the move that is under way. */
export interface DrawnSetUp {
  readonly input: SearchInput;
  readonly place: Place;
  readonly candidate: Candidate;
  /** Where the levers stood, or the set-up it is compared with: a thin line, figures in the second ink. */
  readonly before: Candidate | undefined;
  readonly details: CandidateDetails | undefined;
  readonly areDetailsPending: boolean;
  /** A lever is held: what need not follow in the same frame waits until it is let go. */
  readonly isMoving: boolean;
  /** Moves the levers; left out: nothing can be turned (a page for reading). */
  readonly move: ((settings: Settings, phase: 'moving' | 'settled') => void) | undefined;
}

/** Room that a method's section takes, in mm from its origin: left end of the base plate, y downwards. */
export interface SectionRoom {
  readonly width_mm: number;
  /** Highest face that parts in stock can bring, above the base plate. */
  readonly highest_mm: number;
  /** Upper face of what is mounted now, above the base plate; it is projected into the shell. */
  readonly face_mm: number;
}

/**
 * How one way of dosing is drawn. The page knows no method: it asks the table of drawings by the method's name.
 * `Section` is drawn inside the page's one SVG, in mm; `Levers` lies over it; `Parts` stands left of it.
 */
export interface MethodDrawing {
  readonly room: (setUp: DrawnSetUp) => SectionRoom;
  readonly Section: ComponentType<{ readonly setUp: DrawnSetUp }>;
  readonly Levers: ComponentType<{ readonly setUp: DrawnSetUp }>;
  readonly Parts: ComponentType<{ readonly setUp: DrawnSetUp }>;
  /** Letters of an open equation that are measured in the section. */
  readonly letters: (setUp: DrawnSetUp, letters: readonly DrawnLetter[]) => readonly PlacedLetter[];
  /** A figure above the values of the capsule: what other shells would hold. */
  readonly Shells?: ComponentType<{ readonly setUp: DrawnSetUp }>;
  /** The same as text, for those who do not see the drawing. */
  readonly Table: ComponentType<{ readonly setUp: DrawnSetUp }>;
}
