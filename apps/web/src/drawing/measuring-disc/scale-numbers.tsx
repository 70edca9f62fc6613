import { memo, type ReactNode } from 'react';
import { atMm } from '../at-mm.ts';
import { fixed } from '../figures.ts';
import { isSameScale, type DrawnScale } from './is-same-scale.ts';
import { scaleTicks } from './scale-ticks.ts';

/** Numbers close to the disc's upper face would lie on the line. */
const FIRST_mm = 0.35;
const RIGHT_OF_BAR_mm = 0.9;

/** The numbers of a pin's scale, on the outside of the disc. */
export const ScaleNumbers = memo(function ScaleNumbers({ axis_mm, height_mm, lever }: DrawnScale): ReactNode {
  return scaleTicks(lever)
    .filter(({ isNumbered, depth_mm }) => isNumbered && depth_mm >= FIRST_mm)
    .map(({ reading_division, depth_mm }) => (
      <span
        key={reading_division}
        className="disc-tick"
        aria-hidden="true"
        style={atMm({ x_mm: axis_mm + RIGHT_OF_BAR_mm, y_mm: depth_mm - height_mm })}
      >
        {fixed(reading_division, Number.isInteger(reading_division) ? 0 : 1)}
      </span>
    ));
}, isSameScale);
