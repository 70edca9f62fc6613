import type { WeightsLine } from '@fillwright/contract/weights';
import { STRUCK_WORDS, WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import { useState, type ReactNode } from 'react';

const ROW_px = 22;
/** More lines than this are drawn as they come into view. */
const ALL_AT_ONCE = 400;
const AHEAD = 30;
const VIEW_px = 640;

interface RawLinesProps {
  readonly what: string;
  readonly lines: readonly WeightsLine[];
  /** Capsules that are named in a verdict, by index. */
  readonly marks: ReadonlyMap<number, string>;
}

/** The text as it came, line by line; what is no weight is struck, with the reason beside it. */
export function RawLines({ what, lines, marks }: RawLinesProps): ReactNode {
  const [top_px, setTop] = useState(0);
  const isLong = lines.length > ALL_AT_ONCE;
  const first = isLong ? Math.max(0, Math.floor(top_px / ROW_px) - AHEAD) : 0;
  const last = isLong ? Math.min(lines.length, first + Math.ceil(VIEW_px / ROW_px) + 2 * AHEAD) : lines.length;
  const space = { paddingTop: first * ROW_px, paddingBottom: (lines.length - last) * ROW_px };
  return (
    <div
      className="raw-lines"
      role="region"
      aria-label={WEIGHTS_PAGE_WORDS.listLabel(what)}
      tabIndex={0}
      onScroll={(event) => {
        if (isLong) setTop(event.currentTarget.scrollTop);
      }}
    >
      <ol style={space}>
        {lines.slice(first, last).map((line) => (
          <RawLine key={line.line} line={line} mark={markOf(line, marks)} count={lines.length} />
        ))}
      </ol>
    </div>
  );
}

function markOf(line: WeightsLine, marks: ReadonlyMap<number, string>): string {
  if (line.kind === 'struck') return line.reason === 'blank' ? '' : STRUCK_WORDS[line.reason].mark;
  const mark = line.kind === 'weight' ? marks.get(line.index) : undefined;
  return mark ?? (line.isFar ? WEIGHTS_PAGE_WORDS.far : '');
}

function RawLine({ line, mark, count }: { line: WeightsLine; mark: string; count: number }): ReactNode {
  const isStruck = line.kind === 'struck';
  const isToLookAt = isStruck ? line.mayBeWeight : mark !== '';
  const number = line.kind === 'weight' ? String(line.index + 1) : '';
  return (
    <li className={isStruck ? 'raw-line raw-struck' : 'raw-line'} aria-posinset={line.line} aria-setsize={count}>
      <span className={isToLookAt && !isStruck ? 'raw-number attention' : 'raw-number'}>{number}</span>
      {isStruck ? <s className="raw-text">{line.raw}</s> : <span className="raw-text">{line.raw}</span>}
      {mark === '' ? null : <span className={isToLookAt ? 'raw-mark attention' : 'raw-mark'}>{mark}</span>}
    </li>
  );
}
