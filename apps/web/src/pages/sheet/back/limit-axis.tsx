import type { LimitCard } from '@fillwright/engine/design';
import { SHEET_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { NumberGroup } from '../../../drawing/index.ts';
import { PageNumber, type NumberKey } from '../../../numbers/index.ts';
import { apart } from '../paper/apart.ts';
import { fixed, limitText, short, type SheetFacts } from '../sheet-facts.ts';
import { limitMarks, type LimitMark } from './limit-marks.ts';
import { todoWords } from './todo-words.ts';

/** Lengths on paper, mm. */
const HEIGHT_mm = 108;
const END_mm = 8;
const ROW_mm = 6.4;
const TODO_ROW_mm = 9.5;
const X = { net: 20, bar: 24, barEnd: 62, inner: 28, innerEnd: 58, gross: 67, name: 84, todo: 127 };
const TICK_mm = 2.5;
const MEAN_END_mm = 5;

/** Limits on one axis: net left, gross right, what to do at the height of its zone. */
export function LimitAxis({ facts, card }: { readonly facts: SheetFacts; readonly card: LimitCard }): ReactNode {
  const marks = limitMarks(card);
  const { netLow_mg, netHigh_mg } = card.individualAction;
  const y = (net_mg: number): number =>
    END_mm + ((HEIGHT_mm - 2 * END_mm) * (netHigh_mg - net_mg)) / (netHigh_mg - netLow_mg);
  const labels = apart(
    marks.map(({ net_mg }) => y(net_mg)),
    ROW_mm,
  );
  const todos = apart(
    marks.map((mark) => todoAt(mark, y)),
    TODO_ROW_mm,
  );
  const { sampleCount } = card;
  const words = SHEET_WORDS;
  return (
    <>
      <div className="sheet-axis-head">
        <span style={{ left: 0, width: `${X.net}mm`, textAlign: 'right' }}>{words.axisNet}</span>
        <span style={{ left: `${X.bar}mm`, width: `${X.barEnd - X.bar}mm`, textAlign: 'center' }}>
          {words.axisSingle}
        </span>
        <strong style={{ left: `${X.gross}mm` }}>{words.axisGross}</strong>
        <strong style={{ left: `${X.todo}mm` }}>{words.axisWhat}</strong>
      </div>
      <NumberGroup className="sheet-axis" style={{ height: `${HEIGHT_mm}mm` }} label={words.limits}>
        <AxisBars card={card} y={y} />
        {marks.map((mark, i) => (
          <Mark
            key={`${mark.kind}-${mark.side}`}
            mark={mark}
            sampleCount={sampleCount}
            at={y(mark.net_mg)}
            label={labels[i] ?? 0}
          />
        ))}
        {marks.map((mark, i) => (
          <p
            key={`${mark.kind}-${mark.side}`}
            className="sheet-axis-todo"
            style={{ left: `${X.todo}mm`, top: `${short(todos[i] ?? 0)}mm` }}
          >
            {todoWords(facts, mark)}
          </p>
        ))}
      </NumberGroup>
    </>
  );
}

/** Beyond an action limit the advice stands in the black; that for the mean just outside of its limit. */
function todoAt({ kind, side, net_mg }: LimitMark, y: (net_mg: number) => number): number {
  const outward = side === 'low' ? 1 : -1;
  if (side === 'middle') return y(net_mg);
  return y(net_mg) + outward * (kind === 'single-alert' ? 1 : 3);
}

function AxisBars({ card, y }: { readonly card: LimitCard; readonly y: (net_mg: number) => number }): ReactNode {
  const { individualAction: action, individualAlert: alert, meanAction: mean, sampleCount } = card;
  const words = SHEET_WORDS;
  const zone = (kind: string, top: number, bottom: number): ReactNode => (
    <rect
      className={`sheet-axis-${kind}`}
      x={X.bar}
      y={short(top)}
      width={X.barEnd - X.bar}
      height={short(bottom - top)}
    />
  );
  const inner = (kind: string, top: number, bottom: number): ReactNode => (
    <rect
      className={`sheet-axis-${kind}`}
      x={X.inner}
      y={short(top)}
      width={X.innerEnd - X.inner}
      height={short(bottom - top)}
    />
  );
  const middle = (X.bar + X.barEnd) / 2;
  const text = (at: number, words_: string, kind = 'sheet-svg-text'): ReactNode => (
    <text className={kind} x={middle} y={short(at + 1.3)} textAnchor="middle">
      {words_}
    </text>
  );
  const [meanTop, meanBottom] = [y(mean.netHigh_mg), y(mean.netLow_mg)];
  return (
    <svg
      role="img"
      aria-label={words.axisLabel(sampleCount)}
      viewBox={`0 0 70 ${HEIGHT_mm}`}
      style={{ width: '70mm', height: `${HEIGHT_mm}mm` }}
    >
      {zone('action', 0, y(action.netHigh_mg))}
      {zone('alert', y(action.netHigh_mg), y(alert.netHigh_mg))}
      {zone('leave', y(alert.netHigh_mg), y(alert.netLow_mg))}
      {zone('alert', y(alert.netLow_mg), y(action.netLow_mg))}
      {zone('action', y(action.netLow_mg), HEIGHT_mm)}
      {inner('action', meanTop - MEAN_END_mm, meanTop)}
      {inner('leave', meanTop, meanBottom)}
      {inner('action', meanBottom, meanBottom + MEAN_END_mm)}
      {text(END_mm / 2, words.action, 'sheet-svg-inverse')}
      {text((y(action.netHigh_mg) + y(alert.netHigh_mg)) / 2, words.alert)}
      {text((y(alert.netLow_mg) + y(action.netLow_mg)) / 2, words.alert)}
      {text(HEIGHT_mm - END_mm / 2, words.action, 'sheet-svg-inverse')}
      {text(meanTop - MEAN_END_mm / 2, words.action, 'sheet-svg-inverse')}
      {text(meanBottom + MEAN_END_mm / 2, words.action, 'sheet-svg-inverse')}
      {text((meanTop + meanBottom) / 2 - 4, words.axisMean(sampleCount))}
      {text((meanTop + meanBottom) / 2 + 4, words.leave)}
    </svg>
  );
}

interface MarkProps {
  readonly mark: LimitMark;
  readonly sampleCount: number;
  readonly at: number;
  readonly label: number;
}

/** A limit beside the axis; a thin line leads to it where its label had to give way. */
function Mark({ mark, sampleCount, at, label }: MarkProps): ReactNode {
  const { kind, net_mg, gross_mg } = mark;
  const isStrong = kind !== 'single-alert';
  const top = `${short(label)}mm`;
  const [low, high] = [Math.min(at, label), Math.max(at, label)];
  return (
    <div className={isStrong ? 'sheet-strong' : ''}>
      <svg
        className="sheet-axis-leads"
        viewBox={`0 0 70 ${HEIGHT_mm}`}
        style={{ width: '70mm', height: `${HEIGHT_mm}mm` }}
        aria-hidden="true"
      >
        <path
          className="drawing-edge"
          d={`M${X.bar - TICK_mm} ${short(label)}L${X.bar} ${short(at)}M${X.barEnd} ${short(at)}L${X.barEnd + TICK_mm} ${short(label)}`}
        />
        {high - low > 0.5 ? null : <path className="drawing-edge" d={`M${X.bar - TICK_mm} ${short(at)}H${X.bar}`} />}
      </svg>
      <span className="sheet-axis-net" style={{ top, width: `${X.net}mm` }}>
        <MarkNumber mark={mark} kind="limit" mass_mg={net_mg} />
      </span>
      <span className="sheet-axis-gross" style={{ top, left: `${X.gross}mm` }}>
        <MarkNumber mark={mark} kind="gross" mass_mg={gross_mg} />
      </span>
      <span className="sheet-axis-name" style={{ top, left: `${X.name}mm` }}>
        {markWords(mark, sampleCount)}
      </span>
    </div>
  );
}

interface MarkNumberProps {
  readonly mark: LimitMark;
  readonly kind: 'limit' | 'gross';
  readonly mass_mg: number;
}

function MarkNumber({ mark, kind, mass_mg }: MarkNumberProps): ReactNode {
  const number = numberOfMark(mark, kind);
  const text = markText(mark, mass_mg);
  return number === undefined ? text : <PageNumber number={number}>{text}</PageNumber>;
}

/** What a mark opens, net or gross. */
function numberOfMark({ kind, side }: LimitMark, of: 'limit' | 'gross'): NumberKey | undefined {
  if (kind === 'target' || side === 'middle') return of === 'limit' ? 'target' : undefined;
  const names = { 'single-action': 'action', 'single-alert': 'alert', 'mean-action': 'mean' } as const;
  return `${of}-${names[kind]}-${side}`;
}

/** The target is no limit: it is rounded as usual. */
function markText({ side }: LimitMark, mass_mg: number): string {
  return side === 'middle' ? fixed(mass_mg) : limitText(mass_mg, side);
}

function markWords({ kind }: LimitMark, sampleCount: number): string {
  const { rows } = SHEET_WORDS;
  switch (kind) {
    case 'single-action':
      return rows.singleAction;
    case 'single-alert':
      return rows.singleAlert;
    case 'mean-action':
      return rows.meanAction(sampleCount);
    case 'target':
      return rows.target;
  }
}
