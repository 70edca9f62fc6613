import type { CSSProperties, ReactNode } from 'react';
import { atMm, rounded as r } from '../at-mm.ts';
import { AttentionMark } from '../attention-mark.tsx';
import { NumberButton } from '../number-button.tsx';
import type { Callout } from './callouts.ts';

/** Where the texts stand: left edge, and the height of each. */
export interface CalloutRoom {
  readonly axis_mm: number;
  readonly left_mm: number;
  readonly at_mm: readonly number[];
}

/** Leader lines from the capsule to its values, in the mm of the drawing. */
export function CalloutLines({
  items,
  room,
}: {
  readonly items: readonly Callout[];
  readonly room: CalloutRoom;
}): ReactNode {
  return items.map(({ point, title, isAttention }, i) => {
    const x = r(room.axis_mm + point.x_mm);
    const y = r(room.at_mm[i] ?? 0);
    return (
      <g key={title} className={isAttention ? 'callout-attention' : undefined}>
        <path
          className="drawing-lead"
          d={`M${x} ${r(point.y_mm)}L${r(room.left_mm - 1)} ${y}H${r(room.left_mm - 0.25)}`}
        />
        <circle className="drawing-dot" cx={x} cy={r(point.y_mm)} r="0.11" />
      </g>
    );
  });
}

/** The values themselves, over the drawing. */
export function CalloutTexts(props: {
  readonly items: readonly Callout[];
  readonly room: CalloutRoom;
  /** Further lines by the number they belong to. */
  readonly extra?: Readonly<Record<string, ReactNode>>;
}): ReactNode {
  const { items, room, extra = {} } = props;
  return items.map(({ number, title, about, isAttention }, i) => (
    <Place key={i} style={atMm({ x_mm: room.left_mm, y_mm: room.at_mm[i] ?? 0 })}>
      <div className={isAttention ? 'callout-title attention' : 'callout-title'}>
        {isAttention ? <AttentionMark /> : null} {number ? <NumberButton number={number}>{title}</NumberButton> : title}
      </div>
      {about.map((line) => (
        <div key={line} className="quiet">
          {line}
        </div>
      ))}
      {number ? extra[number] : null}
    </Place>
  ));
}

function Place({ style, children }: { readonly style: CSSProperties; readonly children: ReactNode }): ReactNode {
  return (
    <div className="callout" style={style}>
      {children}
    </div>
  );
}
