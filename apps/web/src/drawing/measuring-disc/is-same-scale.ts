import type { Lever } from './lever.ts';

interface OnScale {
  readonly axis_mm: number;
  readonly height_mm: number;
  readonly lever: Pick<Lever, 'mounted' | 'machine'>;
}

/** @returns whether marks and numbers of a pin's scale are the same: the depth of the pin changes none of them */
export function isSameScale(one: OnScale, other: OnScale): boolean {
  return (
    one.axis_mm === other.axis_mm &&
    one.height_mm === other.height_mm &&
    one.lever.mounted.scale === other.lever.mounted.scale &&
    one.lever.machine.max_mm === other.lever.machine.max_mm &&
    one.lever.machine.min_mm === other.lever.machine.min_mm
  );
}
