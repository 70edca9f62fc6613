import type { KnownGeometry, ShellRecord } from '@fillwright/engine/shells';

/** Section of a locked shell, mm: heights above the outer tip of the body, radii from the axis. */
export interface ShellSection {
  readonly bodyOuter_mm: number;
  readonly bodyInner_mm: number;
  readonly capOuter_mm: number;
  readonly capInner_mm: number;
  readonly wall_mm: number;
  readonly rim_mm: number;
  readonly closed_mm: number;
  /** Open end of the cap; left out where the length of the cap is not known: its side is then drawn to the rim only. */
  readonly capEdge_mm?: number;
}

/**
 * Section of a locked shell from its geometry and record.
 *
 * @param geometry - inside of the shell
 * @param record - figures of the size: outer diameter and length of the cap
 * @returns heights and radii, mm
 */
export function shellSection(geometry: KnownGeometry, record: ShellRecord): ShellSection {
  const { bodyInnerRadius_mm, capInnerRadius_mm, bodyWall_mm, bodyLength_mm, closedLength_mm } = geometry;
  const capOuter_mm = (record.capOuterDiameter_mm?.value ?? 2 * (capInnerRadius_mm + bodyWall_mm)) / 2;
  const capLength_mm = record.capLength_mm?.value;
  return {
    bodyOuter_mm: bodyInnerRadius_mm + bodyWall_mm,
    bodyInner_mm: bodyInnerRadius_mm,
    capOuter_mm,
    capInner_mm: capInnerRadius_mm,
    wall_mm: bodyWall_mm,
    rim_mm: bodyLength_mm,
    closed_mm: closedLength_mm,
    ...(capLength_mm === undefined ? {} : { capEdge_mm: closedLength_mm - capLength_mm }),
  };
}
