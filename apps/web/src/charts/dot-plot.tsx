import type { ReactNode } from 'react';
import { axisLabels, NAME_px, type AxisLabel } from './axis-labels.ts';
import './charts.css';
import { massAxis, type MassAxis } from './mass-axis.ts';
import { StackedMasses } from './stacked-masses.tsx';

/** Limits to draw, net. */
interface PlotLimits {
  readonly singleLow_mg: number;
  readonly singleHigh_mg: number;
  readonly meanLow_mg: number;
  readonly meanHigh_mg: number;
}

interface DotPlotProps {
  readonly width_px: number;
  readonly height_px: number;
  /** In the order weighed. */
  readonly masses_mg: readonly number[];
  readonly mean_mg: number;
  /** Bars over all masses; edges on the limits. */
  readonly bars: { readonly low_mg: number; readonly width_mg: number; readonly counts: readonly number[] };
  readonly limits?: PlotLimits | undefined;
  /** Gross is net and this; left out: the masses are written once. */
  readonly tare_mg?: number | undefined;
  /** Indices drawn as triangles. */
  readonly odd: ReadonlySet<number>;
  /** Masses come in groups of so many; left out: one run. */
  readonly groupSize?: number | undefined;
  readonly words: {
    readonly label: string;
    readonly left: string;
    readonly right: string;
    readonly single: string;
    readonly mean: string;
    readonly byWeight: string;
    readonly inOrder: string;
    readonly group: (group: number) => string;
    readonly mass: (mass_mg: number) => string;
  };
}

const SIDE = { left: 66, right: 68, top: 12, bottom: 28 } as const;
/** Here there is no room for the word before a number. */
const NARROW_px = 300;
const LEAST_NAMED_px = 100;
/** Of the width, at most so many pixels, is left to the stack. */
const STACK = { share: 0.24, most_px: 170 } as const;

/** Weights in the order weighed, and the same stacked, on one mass axis: net on the left, gross on the right. */
export function DotPlot(props: DotPlotProps): ReactNode {
  const { width_px, height_px, bars, limits, words } = props;
  const axis = massAxis({
    low_mg: bars.low_mg - 0.5 * bars.width_mg,
    high_mg: bars.low_mg + (bars.counts.length + 0.5) * bars.width_mg,
    ...{ top_px: SIDE.top, bottom_px: height_px - SIDE.bottom },
  });
  const right_px = width_px - (props.tare_mg === undefined ? 8 : SIDE.right);
  const stack_px = Math.min(STACK.most_px, STACK.share * width_px);
  const run = { from_px: SIDE.left, to_px: right_px - stack_px - 8 };
  const base_px = height_px - SIDE.bottom;
  return (
    <svg
      className="plot"
      viewBox={`0 0 ${width_px} ${height_px}`}
      width={width_px}
      height={height_px}
      role="img"
      aria-label={words.label}
    >
      {limits ? <LimitLines {...{ axis, limits, right_px }} /> : null}
      <path className="plot-mean" d={`M${SIDE.left} ${axis.y(props.mean_mg).toFixed(1)}H${right_px.toFixed(1)}`} />
      <GroupLines {...props} run={run} base_px={base_px} />
      <RunDots {...props} axis={axis} run={run} />
      <StackedMasses
        {...{ axis, bars, odd: props.odd, masses_mg: props.masses_mg }}
        from_px={run.to_px + 8}
        to_px={right_px}
      />
      <path className="plot-axis" d={`M${SIDE.left} ${base_px}H${right_px}M${run.to_px + 2} ${SIDE.top}V${base_px}`} />
      <Labels {...props} axis={axis} right_px={right_px} />
      <text className="plot-quiet" x={SIDE.left - 8} y={height_px - 8} textAnchor="end">
        {words.left}
      </text>
      {stack_px < LEAST_NAMED_px ? null : (
        <text className="plot-quiet" x={(run.to_px + right_px) / 2} y={height_px - 8} textAnchor="middle">
          {words.byWeight}
        </text>
      )}
      {props.tare_mg === undefined ? null : (
        <text className="plot-quiet" x={right_px + 6} y={height_px - 8}>
          {words.right}
        </text>
      )}
    </svg>
  );
}

interface Run {
  readonly from_px: number;
  readonly to_px: number;
}

function placeOf(index: number, count: number, run: Run): number {
  return run.from_px + 6 + ((run.to_px - run.from_px - 12) * (index + 0.5)) / count;
}

/** Points of one path with round ends: ten thousand of them are one element. */
function RunDots({ masses_mg, odd, axis, run }: DotPlotProps & { axis: MassAxis; run: Run }): ReactNode {
  const at = (mass_mg: number, i: number): string =>
    `${placeOf(i, masses_mg.length, run).toFixed(1)} ${axis.y(mass_mg).toFixed(1)}`;
  const dots = masses_mg.map((mass_mg, i) => (odd.has(i) ? '' : `M${at(mass_mg, i)}h0`)).join('');
  const marks = masses_mg.map((mass_mg, i) => (odd.has(i) ? `M${at(mass_mg, i)}m0-5l5.5 9.5h-11z` : '')).join('');
  return (
    <>
      <path className="plot-dots" strokeWidth={dotSize(masses_mg.length)} d={dots} />
      <path className="plot-odd" d={marks} />
    </>
  );
}

function dotSize(count: number): number {
  return count <= 120 ? 6 : count <= 600 ? 4 : 2.4;
}

function GroupLines({
  groupSize,
  masses_mg,
  words,
  run,
  base_px,
}: DotPlotProps & { run: Run; base_px: number }): ReactNode {
  if (groupSize === undefined)
    return (
      <text className="plot-quiet" x={(run.from_px + run.to_px) / 2} y={base_px + 20} textAnchor="middle">
        {words.inOrder}
      </text>
    );
  const groupCount = Math.ceil(masses_mg.length / groupSize);
  const edge = (group: number): number => placeOf(group * groupSize - 0.5, masses_mg.length, run);
  const groups = Array.from({ length: groupCount }, (_, i) => i + 1);
  return groups.map((group) => (
    <g key={group}>
      {group === groupCount ? null : (
        <path className="plot-hair" d={`M${edge(group).toFixed(1)} ${SIDE.top}V${base_px}`} />
      )}
      <text className="plot-quiet" x={(edge(group - 1) + edge(group)) / 2} y={base_px + 20} textAnchor="middle">
        {run.to_px - run.from_px < NARROW_px ? group : words.group(group)}
      </text>
    </g>
  ));
}

function LimitLines({ axis, limits, right_px }: { axis: MassAxis; limits: PlotLimits; right_px: number }): ReactNode {
  const { singleLow_mg, singleHigh_mg, meanLow_mg, meanHigh_mg } = limits;
  const [top, bottom] = [axis.y(meanHigh_mg), axis.y(meanLow_mg)];
  const line = (mass_mg: number): string => `M${SIDE.left} ${axis.y(mass_mg).toFixed(1)}H${right_px.toFixed(1)}`;
  return (
    <>
      <rect className="plot-band" x={SIDE.left} y={top} width={right_px - SIDE.left} height={bottom - top} />
      <path className="plot-limit" d={line(singleLow_mg) + line(singleHigh_mg)} />
    </>
  );
}

function Labels({
  axis,
  limits,
  tare_mg,
  words,
  height_px,
  right_px,
}: DotPlotProps & { axis: MassAxis; right_px: number }): ReactNode {
  const wanted: AxisLabel[] = axis.ticks_mg.map((mass_mg) => ({ mass_mg, kind: 'tick' }));
  if (limits)
    wanted.push(
      { mass_mg: limits.singleHigh_mg, kind: 'single' },
      { mass_mg: limits.singleLow_mg, kind: 'single' },
      { mass_mg: limits.meanHigh_mg, kind: 'mean' },
      { mass_mg: limits.meanLow_mg, kind: 'mean' },
    );
  // Under its mass; over it where the foot of the axis is too near.
  const nameAt = (y_px: number): number =>
    y_px + 5 + NAME_px > height_px - SIDE.bottom ? y_px + 5 - NAME_px : y_px + 5 + NAME_px;
  return axisLabels(wanted, axis.y).map(({ mass_mg, kind, isNamed }) => (
    <g key={`${kind} ${mass_mg}`} className={`plot-label-${kind}`}>
      <text x={SIDE.left - 8} y={axis.y(mass_mg) + 5} textAnchor="end">
        {words.mass(mass_mg)}
      </text>
      {tare_mg === undefined ? null : (
        <text x={right_px + 6} y={axis.y(mass_mg) + 5}>
          {words.mass(mass_mg + tare_mg)}
        </text>
      )}
      {kind === 'tick' || !isNamed ? null : (
        <text className="plot-limit-name" x={SIDE.left - 8} y={nameAt(axis.y(mass_mg))} textAnchor="end">
          {words[kind]}
        </text>
      )}
    </g>
  ));
}
