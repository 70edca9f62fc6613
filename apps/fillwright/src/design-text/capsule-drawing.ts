import type { RankedCandidate } from '@fillwright/engine/design';
import { slugFit } from '@fillwright/engine/shells';
import { DESIGN_WORDS } from '@fillwright/words/en';
import { fixed } from './shown.ts';

/** Millimetres per column and per row: letters are about twice as high as wide. */
const COLUMN_mm = 0.35;
const ROW_mm = 0.7;
/** Powder from loose to dense. */
const SHADES = [' ', '░', '▒', '▓', '█'] as const;
const RULER_mm = 10;

interface Section {
  readonly length_mm: number;
  /** Inner radius at a distance from the outside of the body's end; 0 outside the shell. */
  readonly inside_mm: (at_mm: number) => number;
  readonly slugFrom_mm: number;
}

/**
 * The closed capsule in section along its axis, to scale: the body's end at the left, the cap at the right.
 *
 * @param candidate - the set-up
 * @returns the lines, a ruler of 10 mm below
 */
export function capsuleDrawing(candidate: RankedCandidate): string {
  const { geometry, prediction, size } = candidate;
  const section = sectionOf(candidate);
  const columnCount = Math.ceil(section.length_mm / COLUMN_mm) + 2;
  const outer_mm = geometry.capInnerRadius_mm + geometry.bodyWall_mm;
  const rowCount = 2 * Math.ceil(outer_mm / ROW_mm) + 1;
  const rows = Array.from({ length: rowCount }, (_, row) => {
    const radius_mm = Math.abs(row - (rowCount - 1) / 2) * ROW_mm;
    const cells = Array.from({ length: columnCount }, (_, column) =>
      cell(candidate, section, { at_mm: (column - 0.5) * COLUMN_mm, radius_mm }),
    );
    return `  ${cells.join('')}`.trimEnd();
  });
  const ruler = `  |${'-'.repeat(Math.round(RULER_mm / COLUMN_mm) - 2)}| ${String(RULER_mm)} mm`;
  const title = DESIGN_WORDS.capsule({
    size,
    released: fixed(prediction.released_mm),
    longest: fixed(prediction.longest_mm),
  });
  return [title, ...rows.filter((row) => row.trim() !== ''), ruler].join('\n');
}

function sectionOf({ geometry, prediction }: RankedCandidate): Section {
  const { bodyInnerRadius_mm, capInnerRadius_mm, bodyWall_mm, bodyLength_mm, closedLength_mm } = geometry;
  const inside_mm = (at_mm: number): number => {
    if (at_mm <= bodyLength_mm) return dome(at_mm - bodyWall_mm, bodyInnerRadius_mm);
    return dome(closedLength_mm - bodyWall_mm - at_mm, capInnerRadius_mm);
  };
  const dead_mm = slugFit({ geometry, boreDiameter_mm: prediction.bore_mm }).dead_mm;
  return { length_mm: closedLength_mm, inside_mm, slugFrom_mm: bodyWall_mm + dead_mm };
}

/** Radius of a hemispherical end of a tube at a distance from its tip. */
function dome(fromTip_mm: number, radius_mm: number): number {
  if (fromTip_mm <= 0) return 0;
  if (fromTip_mm >= radius_mm) return radius_mm;
  return Math.sqrt(fromTip_mm * (2 * radius_mm - fromTip_mm));
}

function cell(candidate: RankedCandidate, section: Section, at: { at_mm: number; radius_mm: number }): string {
  const { prediction } = candidate;
  const inner_mm = section.inside_mm(at.at_mm);
  const isInside = at.radius_mm < inner_mm;
  if (!isInside) return isWall(section, at) ? '#' : ' ';
  const along_mm = at.at_mm - section.slugFrom_mm;
  const isSlug = along_mm >= 0 && along_mm <= prediction.released_mm && at.radius_mm <= prediction.width_mm / 2;
  return isSlug ? shade(candidate, 1 - along_mm / prediction.released_mm) : '·';
}

/** A cell outside the inner space that touches it is wall: the real wall of 0.1 mm is thinner than a letter. */
function isWall(section: Section, { at_mm, radius_mm }: { at_mm: number; radius_mm: number }): boolean {
  const neighbours = [
    [at_mm - COLUMN_mm, radius_mm],
    [at_mm + COLUMN_mm, radius_mm],
    [at_mm, radius_mm - ROW_mm],
  ] as const;
  return neighbours.some(([x_mm, r_mm]) => Math.abs(r_mm) < section.inside_mm(x_mm));
}

/** The top of the slug in the disc is the end that meets the cap. */
function shade({ prediction }: RankedCandidate, depth_frac: number): string {
  const densities = prediction.profile.map(({ density_g_per_mL }) => density_g_per_mL);
  const [least, most] = [Math.min(...densities), Math.max(...densities)];
  const point = prediction.profile.find((one) => one.depth_frac >= depth_frac) ?? prediction.profile.at(-1);
  const share = most > least ? ((point?.density_g_per_mL ?? least) - least) / (most - least) : 0.5;
  return SHADES[1 + Math.min(SHADES.length - 2, Math.floor(share * (SHADES.length - 1)))] ?? ' ';
}
