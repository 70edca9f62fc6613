import type { CapsuleLayout, GhostShell } from './capsule/capsule-layout.ts';
import type { SectionRoom } from './method-drawing.ts';

/** Where everything lies on the page's one drawing, mm: x from the left end of the base plate, y downwards from its face. */
export interface DrawingRoom {
  readonly ruler_mm: number;
  readonly axis_mm: number;
  readonly callouts_mm: number;
  /** From the leader lines of the parts to the right of the capsule. */
  readonly width_mm: number;
  /** Left of the base plate: leader lines of the list of parts. */
  readonly left_mm: number;
  /** Highest face of a part, and top of the capsule, above the base line. */
  readonly highest_mm: number;
  readonly capsule_mm: number;
}

const FAN_mm = 1.9;
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
export function drawingRoom(
  section: SectionRoom,
  { layout, ghosts }: { readonly layout: CapsuleLayout; readonly ghosts: readonly GhostShell[] },
): DrawingRoom {
  const shells = [layout.shell, ...ghosts.map((ghost) => ghost.section)];
  const widest_mm = Math.max(...shells.map(({ capOuter_mm }) => capOuter_mm));
  const ruler_mm = section.width_mm + TO_RULER_mm;
  const axis_mm = ruler_mm + TO_SHELL_mm + widest_mm;
  const callouts_mm = axis_mm + layout.shell.capOuter_mm + TO_CALLOUTS_mm;
  return {
    ruler_mm,
    axis_mm,
    callouts_mm,
    width_mm: FAN_mm + callouts_mm,
    left_mm: FAN_mm,
    highest_mm: section.highest_mm,
    capsule_mm: Math.max(...shells.map(({ closed_mm }) => closed_mm)) - layout.tipBelow_mm,
  };
}
