import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import { useEffect, useMemo, useRef, type ReactElement } from 'react';
import './compared-texts.css';
import { comparedLines } from './compared-lines.ts';

interface Side {
  readonly title: string;
  readonly text: string;
}

/** Room above the first line that differs. */
const CONTEXT_px = 120;

/** Two texts side by side, from the first line that differs; lines that only one of them has carry a sign and words, not a colour alone. */
export function ComparedTexts({ left, right }: { left: Side; right: Side }): ReactElement {
  const rows = useMemo(() => comparedLines(left.text, right.text), [left.text, right.text]);
  const words = BRIEF_PAGE_WORDS.compared;
  const whole = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const first = whole.current?.querySelector<HTMLElement>('[data-only]');
    if (first) whole.current?.scrollTo({ top: first.offsetTop - CONTEXT_px });
  }, [left.text]);
  return (
    <div ref={whole} className="compared" role="region" aria-label={words.label} tabIndex={0}>
      <div className="compared-title">{left.title}</div>
      <div className="compared-title">{right.title}</div>
      {rows.map(({ left: was, right: is, isSame }, index) => (
        <div className="compared-row" key={index}>
          <Line text={was} only={isSame ? undefined : { sign: '−', words: words.removed }} />
          <Line text={is} only={isSame ? undefined : { sign: '+', words: words.added }} />
        </div>
      ))}
    </div>
  );
}

interface LineProps {
  readonly text: string | undefined;
  /** How a line that only this text has is marked. */
  readonly only: { readonly sign: string; readonly words: string } | undefined;
}

function Line({ text, only }: LineProps): ReactElement {
  const mark = text === undefined ? undefined : only;
  return (
    <div className="compared-line" data-only={mark && ''} data-missing={text === undefined ? '' : undefined}>
      <span className="compared-sign" aria-hidden="true">
        {mark?.sign}
      </span>
      {mark && <span className="hidden-text">{mark.words}: </span>}
      <code>{text}</code>
    </div>
  );
}
