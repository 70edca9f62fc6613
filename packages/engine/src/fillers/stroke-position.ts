import type { Filler } from './filler.ts';

/** Which disc group and carrier meet in one stroke; all counted from 1. */
export interface StrokePosition {
  readonly group: number;
  readonly carrier: number;
}

/**
 * Group of the disc and carrier that meet in stroke s (0 is the first).
 *
 * @param filler - numbers of groups and carriers
 * @param strokeIndex - 0, 1, 2, ...
 * @returns group (s mod groups) + 1 and carrier (s mod carriers) + 1
 * @throws never
 * @source indexing of two wheels, arithmetic
 * @validity both wheels advance by one pitch per stroke
 */
export function strokePosition(filler: Filler, strokeIndex: number): StrokePosition {
  return {
    group: (strokeIndex % filler.disc.groupCount) + 1,
    carrier: (strokeIndex % filler.carriers.carrierCount) + 1,
  };
}

/**
 * After how many strokes the same group meets the same carrier again. Fewer than groups x carriers means that some
 * pairs never meet: their effects are aliased and no amount of data tells them apart.
 *
 * @param filler - numbers of groups and carriers
 * @returns least common multiple of groups and carriers, in strokes
 * @throws never
 * @source arithmetic; 6 groups on 12 carriers repeat after 12 strokes, 6 on 10 after 30 (practice of this project)
 * @validity both wheels advance by one pitch per stroke
 */
export function repeatStrokeCount(filler: Filler): number {
  const [a, b] = [filler.disc.groupCount, filler.carriers.carrierCount];
  let [x, y] = [a, b];
  while (y > 0) [x, y] = [y, x % y];
  return (a * b) / x;
}
