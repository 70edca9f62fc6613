import { memo, type ReactNode } from 'react';
import { rounded as r } from '../at-mm.ts';
import { isSameScale } from './is-same-scale.ts';
import type { Lever } from './lever.ts';
import { ScaleMarks } from './scale-marks.tsx';

interface StationSectionProps {
  readonly bore_mm: number;
  readonly axis_mm: number;
  readonly height_mm: number;
  readonly set_mm: number;
  readonly reached_mm: number;
  /** The spring gives way: the pin does not reach the depth that is set. */
  readonly isYielding: boolean;
  readonly shade: string;
  readonly lever: Lever;
  readonly before_mm: number | undefined;
}

/** The pin is drawn up and out of the picture. */
const PIN_TOP_mm = 60;
const POINTER_mm = { long: 0.45, high: 0.26 };
const RANGE_BAR_mm = 0.78;
/** Coils of a spring that gives way: from above the disc's face down to just above the pin's. */
const SPRING_mm = { top: 1.2, foot: 0.25, swing: 0.7, turns: 4 };

/** One station in half section: powder and pin left of the axis; scale and validated range right of it. A lever moves transforms only. */
export const StationSection = memo(function StationSection(props: StationSectionProps): ReactNode {
  const { bore_mm, axis_mm, height_mm, set_mm, reached_mm, isYielding, shade, lever, before_mm } = props;
  const y = (depth_mm: number): number => r(depth_mm - height_mm);
  const left = r(bore_mm);
  const axis = r(axis_mm);
  const width = r(axis_mm - bore_mm);
  const bar = r(axis_mm + RANGE_BAR_mm);
  return (
    <g>
      <rect x={left} y={y(0)} width={width} height={r(height_mm)} className="disc-powder" style={{ fill: shade }} />
      <rect
        x={left}
        y={-PIN_TOP_mm}
        width={width}
        height={PIN_TOP_mm}
        className="disc-pin"
        transform={`translate(0 ${y(reached_mm)})`}
      />
      <StationStill {...{ bore_mm, axis_mm, height_mm, lever }} />
      {before_mm === undefined ? null : <path className="drawing-before" d={`M${left} ${y(before_mm)}H${bar}`} />}
      {isYielding ? (
        <>
          <path className="disc-spring" d={springPath({ x_mm: (bore_mm + axis_mm) / 2, height_mm, reached_mm })} />
          <path className="disc-set" d={`M${left} ${y(set_mm)}H${axis}`} />
        </>
      ) : null}
      <path className="disc-face" d={`M${left} 0H${axis}`} transform={`translate(0 ${y(reached_mm)})`} />
      <g transform={`translate(0 ${y(set_mm)})`}>
        <path className="disc-face" d={`M${r(axis_mm - POINTER_mm.long)} 0H${bar}`} />
        <path
          className="disc-pointer"
          d={`M${axis} 0l${-POINTER_mm.long} ${-POINTER_mm.high}v${2 * POINTER_mm.high}z`}
        />
      </g>
    </g>
  );
}, isSameStation);

type StillProps = Pick<StationSectionProps, 'bore_mm' | 'axis_mm' | 'height_mm' | 'lever'>;

function isSameStill(one: StillProps, other: StillProps): boolean {
  const [a, b] = [one.lever.validated, other.lever.validated];
  return isSameScale(one, other) && one.bore_mm === other.bore_mm && a.min_mm === b.min_mm && a.max_mm === b.max_mm;
}

function isSameStation(one: StationSectionProps, other: StationSectionProps): boolean {
  return (
    isSameStill(one, other) &&
    one.set_mm === other.set_mm &&
    one.reached_mm === other.reached_mm &&
    one.isYielding === other.isYielding &&
    one.shade === other.shade &&
    one.before_mm === other.before_mm
  );
}

/** What of a station no lever moves: edge of the bore, axis, scale, validated range. */
const StationStill = memo(function StationStill({ bore_mm, axis_mm, height_mm, lever }: StillProps): ReactNode {
  const { min_mm, max_mm } = lever.validated;
  const bar = r(axis_mm + RANGE_BAR_mm);
  return (
    <>
      <path className="drawing-edge" d={`M${r(bore_mm)} ${-PIN_TOP_mm}V0`} />
      <path className="drawing-axis" d={`M${r(axis_mm)} ${r(-height_mm - 6)}V0.5`} />
      <ScaleMarks {...{ axis_mm, height_mm, lever }} />
      <path className="disc-validated" d={`M${bar} ${r(min_mm - height_mm)}V${r(max_mm - height_mm)}`} />
    </>
  );
}, isSameStill);

function springPath(at: { readonly x_mm: number; readonly height_mm: number; readonly reached_mm: number }): string {
  const top = -at.height_mm - SPRING_mm.top;
  const foot = at.reached_mm - at.height_mm - SPRING_mm.foot;
  const turn = (foot - top) / (2 * SPRING_mm.turns);
  const coils = Array.from({ length: 2 * SPRING_mm.turns }, (_, i) => {
    const x = at.x_mm + (i % 2 === 0 ? SPRING_mm.swing : -SPRING_mm.swing);
    return `L${r(x)} ${r(top + (i + 0.5) * turn)}`;
  });
  return `M${r(at.x_mm)} ${r(top)}${coils.join('')}L${r(at.x_mm)} ${r(foot)}`;
}
