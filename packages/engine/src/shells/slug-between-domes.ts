import { DomainError, requireWithin } from '#catalogue';

/** Inside of a locked shell as a slug meets it. */
export interface ShellInside {
  readonly bodyInnerRadius_mm: number;
  readonly capInnerRadius_mm: number;
  /** Height in the locked cap above the rim of the body. */
  readonly capHeadroom_mm: number;
  readonly bodyLength_mm: number;
  readonly bodyWall_mm: number;
}

/** How a flat slug sits in a locked shell. */
export interface SlugFit {
  /** Height left empty under the slug, in the dome of the body. */
  readonly dead_mm: number;
  /** How far the slug may stand above the rim; below 0 it must stay that far inside. */
  readonly proud_mm: number;
  readonly longestSlug_mm: number;
}

/**
 * A slug is a flat cylinder between two domes: its edges meet them before its faces reach the ends.
 *
 * dead = r_i - sqrt(r_i^2 - r_s^2); proud = sqrt(r_c^2 - r_s^2) - (r_c - h); longest = (L - t) - dead + proud
 *
 * @param input - the inside of the shell, and boreRadius_mm: radius of the slug; all > 0
 * @returns dead_mm, proud_mm, longestSlug_mm; a longest slug of 0 or less means that no slug of this bore fits
 * @throws DomainError "not-a-number", "not-positive", "bore-too-wide" (not below both inner radii)
 * @source geometry
 * @validity hemispherical ends, rigid slug with sharp edges, standing upright; axial springback is part of the length
 * @example slugBetweenDomes({ boreRadius_mm: 3, bodyInnerRadius_mm: 5, capInnerRadius_mm: 5, capHeadroom_mm: 2, bodyLength_mm: 20, bodyWall_mm: 0.1 }) // { dead_mm: 1, proud_mm: 1, longestSlug_mm: 19.9 }
 */
export function slugBetweenDomes(input: ShellInside & { readonly boreRadius_mm: number }): SlugFit {
  const { boreRadius_mm, bodyInnerRadius_mm, capInnerRadius_mm, capHeadroom_mm, bodyLength_mm, bodyWall_mm } = input;
  requireWithin(
    { boreRadius_mm, bodyInnerRadius_mm, capInnerRadius_mm, capHeadroom_mm, bodyLength_mm, bodyWall_mm },
    { above: 0 },
  );
  if (boreRadius_mm >= bodyInnerRadius_mm || boreRadius_mm >= capInnerRadius_mm)
    throw new DomainError('bore-too-wide', { boreRadius_mm, bodyInnerRadius_mm, capInnerRadius_mm });
  const height = (radius_mm: number): number => Math.sqrt(radius_mm * radius_mm - boreRadius_mm * boreRadius_mm);
  const dead_mm = bodyInnerRadius_mm - height(bodyInnerRadius_mm);
  const proud_mm = height(capInnerRadius_mm) - (capInnerRadius_mm - capHeadroom_mm);
  return { dead_mm, proud_mm, longestSlug_mm: bodyLength_mm - bodyWall_mm - dead_mm + proud_mm };
}
