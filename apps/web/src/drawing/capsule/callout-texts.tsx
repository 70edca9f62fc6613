import { memo, type ReactNode } from 'react';
import { atMm, rounded as r } from '../at-mm.ts';
import { SourceMark } from '../../fields/index.ts';
import { AttentionMark } from '../attention-mark.tsx';
import { NumberButton } from '../number-button.tsx';
import type { NumberName } from '../opening.ts';
import type { AboutLine, Callout } from './callouts.ts';

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
  return items.map(({ point, isAttention }, i) => (
    <CalloutLine
      key={i}
      x_mm={r(room.axis_mm + point.x_mm)}
      y_mm={r(point.y_mm)}
      left_mm={room.left_mm}
      at_mm={room.at_mm[i] ?? 0}
      isAttention={isAttention}
    />
  ));
}

const CalloutLine = memo(function CalloutLine(props: {
  readonly x_mm: number;
  readonly y_mm: number;
  readonly left_mm: number;
  readonly at_mm: number;
  readonly isAttention: boolean;
}): ReactNode {
  const { x_mm, y_mm, left_mm, at_mm, isAttention } = props;
  return (
    <g className={isAttention ? 'callout-attention' : undefined}>
      <path className="drawing-lead" d={`M${x_mm} ${y_mm}L${r(left_mm - 1)} ${r(at_mm)}H${r(left_mm - 0.25)}`} />
      <circle className="drawing-dot" cx={x_mm} cy={y_mm} r="0.11" />
    </g>
  );
});

/** The values themselves, over the drawing. */
export function CalloutTexts({
  items,
  room,
}: {
  readonly items: readonly Callout[];
  readonly room: CalloutRoom;
}): ReactNode {
  return items.map(({ number, title, about, mark, isAttention, isSmall = false }, i) => (
    <CalloutText
      key={i}
      x_mm={room.left_mm}
      y_mm={room.at_mm[i] ?? 0}
      {...{ number, title, mark, isAttention, isSmall }}
      lines={about.map(inOneString).join('\n')}
    />
  ));
}

type CalloutTextProps = Pick<Callout, 'title' | 'isAttention'> & {
  readonly x_mm: number;
  readonly y_mm: number;
  readonly number: Callout['number'];
  readonly mark: Callout['mark'];
  readonly isSmall: boolean;
  /** Lines of the text in one string: what does not change is not rendered again. */
  readonly lines: string;
};

const CalloutText = memo(function CalloutText({ x_mm, y_mm, lines, mark, ...title }: CalloutTextProps): ReactNode {
  const about = lines.split('\n').map(outOfOneString);
  return (
    <div className="callout" style={atMm({ x_mm, y_mm })}>
      <Title {...title} />
      {about.map((line, k) => (
        <div key={k} className="quiet">
          {mark && k === about.length - 1 ? <SourceMark kind={mark} isBare /> : null} <About {...line} />
        </div>
      ))}
    </div>
  );
});

const BETWEEN = '\t';

function inOneString({ text, part, number }: AboutLine): string {
  return [text, part ?? '', number ?? ''].join(BETWEEN);
}

function outOfOneString(line: string): AboutLine {
  const [text = '', part = '', number] = line.split(BETWEEN);
  return number ? { text, part, number: number as NumberName } : { text };
}

/** Its number opens, where it has one. */
function About({ text, part = '', number }: AboutLine): ReactNode {
  const at = number === undefined ? -1 : text.lastIndexOf(part);
  if (number === undefined || at < 0) return text;
  return (
    <>
      {text.slice(0, at)}
      <NumberButton number={number}>{part}</NumberButton>
      {text.slice(at + part.length)}
    </>
  );
}

function Title(props: Pick<CalloutTextProps, 'number' | 'title' | 'isAttention' | 'isSmall'>): ReactNode {
  const { number, title, isAttention, isSmall } = props;
  const names = ['callout-title', ...(isAttention ? ['attention'] : []), ...(isSmall ? ['callout-small'] : [])];
  return (
    <div className={names.join(' ')}>
      {isAttention ? <AttentionMark /> : null} {number ? <NumberButton number={number}>{title}</NumberButton> : title}
    </div>
  );
}
