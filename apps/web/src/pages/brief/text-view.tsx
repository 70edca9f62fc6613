import type { FileFault } from '@fillwright/engine/catalogue';
import { useEffect, useRef, type ReactElement } from 'react';
import { useDraft, usePageHidden, type DraftText } from '../../fields/index.ts';
import './text-view.css';

const REST_ms = 400;

interface TextViewProps {
  readonly text: string;
  readonly faults: readonly FileFault[];
  /** A line to go to; another object each time it is asked for. */
  readonly goTo: { readonly line: number } | undefined;
  readonly words: { readonly text: string; readonly textHelp: string };
  readonly onText: (text: string) => void;
}

/** The text of a file. A pause in typing is one step; Tab leaves, as in any field. */
export function TextView({ text, faults, goTo, words, onText }: TextViewProps): ReactElement {
  const area = useRef<HTMLTextAreaElement>(null);
  const { draft, hand } = useTextDraft(text, onText);
  const lines = draft.text.split('\n');
  useEffect(() => {
    if (goTo && area.current) goToLine(area.current, goTo.line);
  }, [goTo]);
  return (
    <div className="text-view">
      <label className="field-label" htmlFor="brief-text">
        {words.text}
      </label>
      <p className="field-help" id="brief-text-help">
        {words.textHelp}
      </p>
      <div className="text-view-page">
        <LineNumbers count={lines.length} faulty={new Set(faults.map(({ line }) => line))} />
        <textarea
          ref={area}
          id="brief-text"
          className="text-view-text"
          aria-describedby="brief-text-help"
          spellCheck={false}
          autoCapitalize="off"
          autoComplete="off"
          wrap="off"
          rows={lines.length + 1}
          value={draft.text}
          onChange={(event) => {
            draft.type(event.target.value);
          }}
          onBlur={hand}
        />
      </div>
    </div>
  );
}

/** What is typed is handed on after a pause, when the text is left, and when the view is closed. */
function useTextDraft(
  text: string,
  onText: (text: string) => void,
): { readonly draft: DraftText; readonly hand: () => void } {
  const draft = useDraft(text);
  const { isDirty, text: typed } = draft;
  const hand = (): void => {
    if (!isDirty) return;
    draft.send(typed);
    onText(typed);
  };
  usePageHidden(hand);
  const last = useRef(hand);
  useEffect(() => {
    last.current = hand;
  });
  useEffect(() => {
    if (!isDirty) return undefined;
    const timer = setTimeout(() => {
      last.current();
    }, REST_ms);
    return () => {
      clearTimeout(timer);
    };
  }, [isDirty, typed]);
  useEffect(
    () => () => {
      last.current();
    },
    [],
  );
  return { draft, hand };
}

function LineNumbers({ count, faulty }: { count: number; faulty: ReadonlySet<number | undefined> }): ReactElement {
  return (
    <ol className="text-view-numbers" aria-hidden="true">
      {Array.from({ length: count }, (_, index) => (
        <li key={index} data-faulty={faulty.has(index + 1) ? '' : undefined}>
          {index + 1}
        </li>
      ))}
    </ol>
  );
}

function goToLine(area: HTMLTextAreaElement, line: number): void {
  const lines = area.value.split('\n');
  const start = lines.slice(0, line - 1).reduce((sum, each) => sum + each.length + 1, 0);
  area.focus({ preventScroll: true });
  area.setSelectionRange(start, start + (lines[line - 1]?.length ?? 0));
  const height = area.clientHeight / (lines.length + 1);
  const top = area.getBoundingClientRect().top + window.scrollY + (line - 1) * height;
  window.scrollTo({ top: Math.max(0, top - window.innerHeight / 3) });
}
