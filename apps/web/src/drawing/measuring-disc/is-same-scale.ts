import type { Lever } from './lever.ts';

/** A pin's scale where it is drawn. */
export interface DrawnScale {
  readonly axis_mm: number;
  readonly height_mm: number;
  readonly lever: Lever;
}

/** @returns whether marks and numbers of a pin's scale are the same: the depth of the pin changes none of them */
export function isSameScale(one: DrawnScale, other: DrawnScale): boolean {
  return (
    one.axis_mm === other.axis_mm &&
    one.height_mm === other.height_mm &&
    one.lever.mounted.scale === other.lever.mounted.scale &&
    one.lever.machine.max_mm === other.lever.machine.max_mm &&
    one.lever.machine.min_mm === other.lever.machine.min_mm
  );
}
