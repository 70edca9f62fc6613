import { depthOfReading_mm } from '@fillwright/engine/fillers';
import { readingsOf } from './depth-of-text.ts';
import type { Lever } from './lever.ts';

export interface ScaleTick {
  readonly reading_division: number;
  readonly depth_mm: number;
  readonly isNumbered: boolean;
}

/** Least distance of two numbers on the scale, so that they can be read. */
const NUMBERS_APART_mm = 0.95;
const ROUND_STEPS = [1, 2, 5, 10, 20, 50, 100];
const SLACK = 1e-9;

/**
 * The marks of a pin's scale along its axis, at round readings inside the machine's range.
 *
 * @param lever - scale and range of the pin
 * @returns marks in the order of readings; every second one carries its number
 */
export function scaleTicks({ mounted, machine }: Pick<Lever, 'mounted' | 'machine'>): readonly ScaleTick[] {
  const pitch_mm = mounted.scale.pitch_mm_per_division;
  const apart = ROUND_STEPS.find((step) => step * pitch_mm >= NUMBERS_APART_mm) ?? ROUND_STEPS.at(-1) ?? 1;
  const half = apart / 2;
  const { low_division, high_division } = readingsOf({ mounted, machine });
  const first = Math.ceil(low_division / half - SLACK);
  const last = Math.floor(high_division / half + SLACK);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => {
    const reading_division = (first + i) * half;
    return {
      reading_division,
      depth_mm: depthOfReading_mm(mounted, reading_division),
      isNumbered: (first + i) % 2 === 0,
    };
  });
}
