import type { CapsuleLayout, GhostShell } from './capsule/capsule-layout.ts';
import type { CalloutRoom } from './capsule/callout-texts.tsx';
import type { SectionRoom } from './method-drawing.ts';

/** Where everything lies on the page's one drawing, mm: x from the left end of the base plate, y downwards from its face. */
export interface DrawingRoom {
  readonly ruler_mm: number;
  readonly axis_mm: number;
  /** Left edge of the values beside the capsule: the drawing ends here. */
  readonly callouts_mm: number;
  /** Highest face of a part, and top of the capsule, above the base line. */
  readonly highest_mm: number;
  readonly capsule_mm: number;
}

/** The capsule and the other shells drawn behind it. */
export interface CapsuleDrawn {
  readonly layout: CapsuleLayout;
  readonly ghosts: readonly GhostShell[];
}

const TO_RULER_mm = 2.1;
const TO_SHELL_mm = 0.5;
const TO_CALLOUTS_mm = 1.5;

/**
 * Section of the machine left, capsule right, one scale: the slug's foot stands on the base line.
 *
 * @param section - room of the method's section
 * @param capsule - layout of the capsule, and the other shells drawn behind it
 * @returns places, mm
 */
export function drawingRoom(section: SectionRoom, { layout, ghosts }: CapsuleDrawn): DrawingRoom {
  const shells = [layout.shell, ...ghosts.map((ghost) => ghost.section)];
  const widest_mm = Math.max(...shells.map(({ capOuter_mm }) => capOuter_mm));
  const ruler_mm = section.width_mm + TO_RULER_mm;
  const axis_mm = ruler_mm + TO_SHELL_mm + widest_mm;
  const callouts_mm = axis_mm + layout.shell.capOuter_mm + TO_CALLOUTS_mm;
  return {
    ruler_mm,
    axis_mm,
    callouts_mm,
    highest_mm: section.highest_mm,
    capsule_mm: Math.max(...shells.map(({ closed_mm }) => closed_mm)) - layout.tipBelow_mm,
  };
}

/** The capsule alone, as on a phone: its axis is the origin. @returns places, mm */
export function capsuleRoom({ layout, ghosts }: CapsuleDrawn): DrawingRoom {
  const room = drawingRoom({ width_mm: 0, highest_mm: 0, face_mm: 0 }, { layout, ghosts });
  const axis_mm = room.axis_mm - room.ruler_mm;
  return { ...room, ruler_mm: 0, axis_mm, callouts_mm: axis_mm + room.callouts_mm - room.axis_mm };
}

/**
 * Where the values beside the capsule stand.
 *
 * @param room - of the drawing
 * @param shares - height of each value, from the top of the capsule (0) to the base line (1)
 * @returns left edge, axis, and heights, mm
 */
export function calloutRoom({ axis_mm, callouts_mm, capsule_mm }: DrawingRoom, shares: readonly number[]): CalloutRoom {
  return { axis_mm, left_mm: callouts_mm, at_mm: shares.map((share) => -capsule_mm * (1 - share)) };
}
