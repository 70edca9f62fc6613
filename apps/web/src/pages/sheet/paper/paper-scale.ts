/** Scales that a ruler on paper is read with, largest first. */
export const SCALES = [3, 2.5, 2, 1.5, 1] as const;

/** What has to fit beside each other, in real mm. */
export interface DrawnParts {
  readonly disc_mm: number;
  readonly capsuleWidth_mm: number;
  readonly highest_mm: number;
}

/** Room on paper, mm. */
export interface PaperRoom {
  readonly width_mm: number;
  readonly height_mm: number;
  /** Between disc, large capsule and the one in true size, and for what stands beside it, mm of paper. */
  readonly gaps_mm: number;
  /** So many scales smaller than would fit, because the page has no room for more. */
  readonly smallerBy?: number;
}

/**
 * The largest scale at which disc, capsule and capsule in true size fit beside each other on paper.
 *
 * @param parts - in real mm
 * @param room - on paper
 * @returns mm of paper per mm; 1 at least, even where it does not fit
 */
export function paperScale(parts: DrawnParts, room: PaperRoom): number {
  const { disc_mm, capsuleWidth_mm, highest_mm } = parts;
  const fits = (scale: number): boolean =>
    scale * (disc_mm + capsuleWidth_mm) + capsuleWidth_mm + room.gaps_mm <= room.width_mm &&
    scale * highest_mm <= room.height_mm;
  const at = SCALES.findIndex(fits);
  return (at < 0 ? undefined : SCALES[at + (room.smallerBy ?? 0)]) ?? 1;
}
