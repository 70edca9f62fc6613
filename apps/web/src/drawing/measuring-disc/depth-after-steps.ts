import type { Range_mm } from '@fillwright/engine/fillers';

/** Where a pin would stand; or that the machine does not go there. */
export type DepthFound =
  | { readonly kind: 'depth'; readonly depth_mm: number }
  | { readonly kind: 'beyond-machine'; readonly depth_mm: number };

/** A thousandth of a micron: sums of tenths leave a tail of digits that no machine has. */
const GRID_mm = 1e-6;
const SLACK_mm = 1e-9;

/**
 * Depth of a pin after whole steps of the machine; above 0 is deeper. Nothing is clamped: a move that the machine
 * cannot make is refused.
 *
 * @param lever - present depth, step and range of the machine, mm
 * @param stepCount - whole steps
 * @returns the depth, or that it lies beyond the machine
 */
export function depthAfterSteps(
  lever: { readonly depth_mm: number; readonly step_mm: number; readonly machine: Range_mm },
  stepCount: number,
): DepthFound {
  return depthWithin(lever.machine, lever.depth_mm + stepCount * lever.step_mm);
}

/** @returns the depth without its tail of digits, or that it lies beyond the machine */
export function depthWithin({ min_mm, max_mm }: Range_mm, wanted_mm: number): DepthFound {
  const depth_mm = Math.round(wanted_mm / GRID_mm) * GRID_mm;
  const tidy_mm = Number(depth_mm.toFixed(6));
  const isWithin = tidy_mm >= min_mm - SLACK_mm && tidy_mm <= max_mm + SLACK_mm;
  return { kind: isWithin ? 'depth' : 'beyond-machine', depth_mm: tidy_mm };
}
