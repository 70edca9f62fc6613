import { memo, type ReactNode } from 'react';
import { rounded as r } from '../at-mm.ts';
import { isSameScale, type DrawnScale } from './is-same-scale.ts';
import { scaleTicks } from './scale-ticks.ts';

const LONG_TICK_mm = 0.52;
const SHORT_TICK_mm = 0.3;

/** The marks of a pin's scale along its axis. */
export const ScaleMarks = memo(function ScaleMarks({ axis_mm, height_mm, lever }: DrawnScale): ReactNode {
  const marks = scaleTicks(lever)
    .filter(({ depth_mm }) => depth_mm >= 0)
    .map(
      ({ depth_mm, isNumbered }) =>
        `M${r(axis_mm)} ${r(depth_mm - height_mm)}h${isNumbered ? LONG_TICK_mm : SHORT_TICK_mm}`,
    );
  return <path className="disc-ticks" d={marks.join('')} />;
}, isSameScale);
