import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import { useMemo, type ReactElement } from 'react';
import './compared-texts.css';
import { comparedLines } from './compared-lines.ts';

interface Side {
  readonly title: string;
  readonly text: string;
}

/** Two texts side by side; lines that only one of them has carry a sign and words, not a colour alone. */
export function ComparedTexts({ left, right }: { left: Side; right: Side }): ReactElement {
  const rows = useMemo(() => comparedLines(left.text, right.text), [left.text, right.text]);
  const words = BRIEF_PAGE_WORDS.compared;
  return (
    <div className="compared" role="region" aria-label={words.label} tabIndex={0}>
      <div className="compared-title">{left.title}</div>
      <div className="compared-title">{right.title}</div>
      {rows.map((row) => (
        <div className="compared-row" key={`${String(row.leftLine)}-${String(row.rightLine)}`}>
          <Line text={row.left} sign={row.right === undefined ? '−' : ''} words={words.removed} />
          <Line text={row.right} sign={row.left === undefined ? '+' : ''} words={words.added} />
        </div>
      ))}
    </div>
  );
}

function Line({ text, sign, words }: { text: string | undefined; sign: string; words: string }): ReactElement {
  const isOnly = sign !== '' && text !== undefined;
  return (
    <div
      className="compared-line"
      data-only={isOnly ? '' : undefined}
      data-missing={text === undefined ? '' : undefined}
    >
      <span className="compared-sign" aria-hidden="true">
        {isOnly ? sign : ''}
      </span>
      {isOnly && <span className="hidden-text">{words}: </span>}
      <code>{text}</code>
    </div>
  );
}
