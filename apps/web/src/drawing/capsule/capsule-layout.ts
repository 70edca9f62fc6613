import type { Candidate, Place, SearchInput } from '@fillwright/engine/design';
import type { Prediction } from '@fillwright/engine/dosing';
import { shellGeometry, slugFit } from '@fillwright/engine/shells';
import { shellSection, type ShellSection } from './shell-section.ts';

/** The slug in its shell. Heights are mm above the face the slug stands on, which lies on the base line of the drawing. */
export interface CapsuleLayout {
  readonly shell: ShellSection;
  /** Outer tip of the body below the base line. */
  readonly tipBelow_mm: number;
  readonly slugRadius_mm: number;
  readonly slugTop_mm: number;
  /** Where the edge of the slug would meet the dome of the cap. */
  readonly domeAtEdge_mm: number;
  /** Under the flat slug in the dome of the body. */
  readonly dead_mm: number;
  readonly deadVolume_mm3: number;
  /** From the edge of the slug to the dome; below 0 the slug is too long to stay whole. */
  readonly free_mm: number;
  /** From the middle of the slug's face to the inside of the cap. */
  readonly freeOnAxis_mm: number;
  /** How far the slug stands above the rim of the body; below 0 it lies that far inside. */
  readonly aboveRim_mm: number;
}

/**
 * How the slug of a set-up lies in its shell.
 *
 * @param slug - bore it comes from, its length once released, and the geometry of the shell
 * @param record - figures of the shell
 * @returns heights, radii and distances, mm
 * @throws DomainError "bore-too-wide"
 */
export function capsuleLayout(
  slug: Pick<Candidate, 'geometry'> & Pick<Prediction, 'bore_mm' | 'released_mm'>,
  record: Place['record'],
): CapsuleLayout {
  const { geometry, bore_mm, released_mm: slugTop_mm } = slug;
  const shell = shellSection(geometry, record);
  const { dead_mm, longestSlug_mm } = slugFit({ geometry, boreDiameter_mm: bore_mm });
  const tipBelow_mm = shell.wall_mm + dead_mm;
  const aboveRim_mm = tipBelow_mm + slugTop_mm - shell.rim_mm;
  return {
    shell,
    tipBelow_mm,
    slugRadius_mm: bore_mm / 2,
    slugTop_mm,
    domeAtEdge_mm: longestSlug_mm,
    dead_mm,
    deadVolume_mm3: capVolume_mm3({ height_mm: dead_mm, radius_mm: shell.bodyInner_mm }),
    free_mm: longestSlug_mm - slugTop_mm,
    freeOnAxis_mm: geometry.capHeadroom_mm - aboveRim_mm,
    aboveRim_mm,
  };
}

/** Volume of a cap of a sphere: pi h^2 (3 r - h) / 3. */
function capVolume_mm3({ height_mm, radius_mm }: { readonly height_mm: number; readonly radius_mm: number }): number {
  return (Math.PI * height_mm * height_mm * (3 * radius_mm - height_mm)) / 3;
}

/** A shell that the brief allows, beside the one that is drawn. */
export interface GhostShell {
  readonly size: string;
  readonly section: ShellSection;
}

/**
 * The other shells of the brief whose geometry is known.
 *
 * @param input - the brief's shells
 * @param size - the one that is drawn
 * @returns their sections, in the order of the brief
 */
export function ghostShells({ shells }: Pick<SearchInput, 'shells'>, size: string): readonly GhostShell[] {
  return shells.flatMap((record) => {
    const geometry = shellGeometry(record);
    if (record.size === size || geometry.kind !== 'known') return [];
    return [{ size: record.size, section: shellSection(geometry, record) }];
  });
}
