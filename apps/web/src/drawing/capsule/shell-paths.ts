import { rounded as r } from '../at-mm.ts';
import type { ShellSection } from './shell-section.ts';

/** Outlines of a locked shell as SVG paths, mm: x from the axis, y downwards from the outer tip of the body. */
export interface ShellPaths {
  readonly body: string;
  readonly cap: string;
  readonly inside: string;
}

/**
 * Walls and inside of a locked shell; both ends are hemispheres.
 *
 * @param section - heights and radii
 * @returns closed paths: wall of the body, wall of the cap, empty space
 */
export function shellPaths(section: ShellSection): ShellPaths {
  const { bodyOuter_mm: b, bodyInner_mm: i, capOuter_mm: c, capInner_mm: k, rim_mm: rim, closed_mm: top } = section;
  const edge = section.capEdge_mm ?? rim;
  const bodySpring = -b;
  const capSpring = -(top - c);
  const body =
    `M${r(-b)} ${r(-rim)}V${r(bodySpring)}A${r(b)} ${r(b)} 0 0 0 ${r(b)} ${r(bodySpring)}V${r(-rim)}H${r(i)}` +
    `V${r(bodySpring)}A${r(i)} ${r(i)} 0 0 1 ${r(-i)} ${r(bodySpring)}V${r(-rim)}Z`;
  const cap =
    `M${r(-c)} ${r(-edge)}V${r(capSpring)}A${r(c)} ${r(c)} 0 0 1 ${r(c)} ${r(capSpring)}V${r(-edge)}H${r(k)}` +
    `V${r(capSpring)}A${r(k)} ${r(k)} 0 0 0 ${r(-k)} ${r(capSpring)}V${r(-edge)}Z`;
  const inside =
    `M${r(-i)} ${r(bodySpring)}A${r(i)} ${r(i)} 0 0 0 ${r(i)} ${r(bodySpring)}V${r(-rim)}H${r(k)}V${r(capSpring)}` +
    `A${r(k)} ${r(k)} 0 0 0 ${r(-k)} ${r(capSpring)}V${r(-rim)}H${r(-i)}Z`;
  return { body, cap, inside };
}

/**
 * Left half of a shell's outline, for ghosts of other sizes.
 *
 * @param section - heights and radii
 * @returns an open path from tip to tip, mm
 */
export function halfOutline(section: ShellSection): string {
  const { bodyOuter_mm: b, capOuter_mm: c, closed_mm: top } = section;
  const edge = section.capEdge_mm ?? section.rim_mm;
  return (
    `M0 0A${r(b)} ${r(b)} 0 0 1 ${r(-b)} ${r(-b)}V${r(-edge)}H${r(-c)}V${r(-(top - c))}` +
    `A${r(c)} ${r(c)} 0 0 1 0 ${r(-top)}`
  );
}
