import type { Range_mm } from '@fillwright/engine/fillers';
import { depthAfterSteps, type DepthFound } from './depth-after-steps.ts';

/** A drag under way. */
export interface Drag {
  /** Depth when the pin was taken hold of. */
  readonly from_mm: number;
  /** How far the pointer went down, in pixels. */
  readonly down_px: number;
  readonly px_per_mm: number;
}

/**
 * Where a dragged pin stands: the pin follows the pointer in whole steps of the machine.
 *
 * @param lever - step and range of the machine, mm
 * @param drag - from where, how far, and the scale of the drawing
 * @returns the depth, or that it lies beyond the machine
 */
export function depthAfterDrag(
  lever: { readonly step_mm: number; readonly machine: Range_mm },
  { from_mm, down_px, px_per_mm }: Drag,
): DepthFound {
  return depthAfterSteps({ ...lever, depth_mm: from_mm }, Math.round(down_px / px_per_mm / lever.step_mm));
}
