import type { KnownGeometry } from './shell-geometry.ts';
import { slugBetweenDomes, type SlugFit } from './slug-between-domes.ts';

/** A shell and the bore the slug comes from. */
export interface SlugInShell {
  readonly geometry: KnownGeometry;
  readonly boreDiameter_mm: number;
}

/**
 * How a slug of a bore sits in a locked shell.
 *
 * @param input - geometry: from `shellGeometry`; boreDiameter_mm: > 0, radial springback is not added
 * @returns dead_mm, proud_mm, longestSlug_mm as `slugBetweenDomes`
 * @throws DomainError "not-a-number", "not-positive", "bore-too-wide"
 * @source geometry
 * @validity as `slugBetweenDomes`
 */
export function slugFit({ geometry, boreDiameter_mm }: SlugInShell): SlugFit {
  return slugBetweenDomes({ ...geometry, boreRadius_mm: boreDiameter_mm / 2 });
}
