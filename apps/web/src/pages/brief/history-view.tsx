import type { DocumentKind, DocumentVersion, DocumentVersionHead } from '@fillwright/contract/documents';
import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import { useEffect, useState, type ReactElement } from 'react';
import { announce } from '../../shell/announcer.tsx';
import { oneVersion, versionsOf } from '../../state/documents-client.ts';
import { ComparedTexts, problemText, timeText } from '../../briefs/index.ts';
import './history-view.css';

interface HistoryProps {
  readonly document: { readonly kind: DocumentKind; readonly id: string };
  /** Newest version known: the list is asked for again when there is another. */
  readonly version: number;
  readonly text: string;
  /** Takes the text of an older version back. */
  readonly onTake: (text: string) => void;
}

const words = BRIEF_PAGE_WORDS.history;

/** Every version that was kept, newest first; an older one can be read beside the text of now, and taken back. */
export function HistoryView({ document: { kind, id }, version, text, onTake }: HistoryProps): ReactElement {
  const [heads, setHeads] = useState<readonly DocumentVersionHead[]>();
  const [old, setOld] = useState<DocumentVersion>();
  const [problem, setProblem] = useState<string>();
  useEffect(() => {
    let isOver = false;
    const asked = version === 0 ? Promise.resolve([]) : versionsOf(kind, id);
    asked.then(
      (found) => {
        if (!isOver) setHeads([...found].reverse());
      },
      (error: unknown) => {
        if (!isOver) setProblem(problemText(error));
      },
    );
    return () => {
      isOver = true;
    };
  }, [kind, id, version]);
  const read = (head: DocumentVersionHead): void => {
    oneVersion(kind, id, head.version).then(setOld, (error: unknown) => {
      setProblem(problemText(error));
    });
  };
  return (
    <div className="history">
      <h2 className="brief-section-title">{words.title}</h2>
      <p className="field-help">{words.unsigned}</p>
      {problem !== undefined && <p className="attention">{problem}</p>}
      {old && (
        <OldVersion
          old={old}
          text={text}
          onTake={onTake}
          onClose={() => {
            setOld(undefined);
          }}
        />
      )}
      {heads?.length === 0 && <p>{words.none}</p>}
      <ul className="history-list">
        {heads?.map((head) => (
          <HistoryItem key={head.version} head={head} isRead={head.version === old?.version} onRead={read} />
        ))}
      </ul>
    </div>
  );
}

interface ItemProps {
  readonly head: DocumentVersionHead;
  readonly isRead: boolean;
  readonly onRead: (head: DocumentVersionHead) => void;
}

function HistoryItem({ head, isRead, onRead }: ItemProps): ReactElement {
  return (
    <li className="history-item" aria-current={isRead || undefined}>
      <span className="history-version">{words.old(head.version)}</span>
      <span>{words.status[head.status]}</span>
      <time dateTime={head.at}>{timeText(head.at)}</time>
      <span>
        {words.columns.by} {head.by}
      </span>
      <span className="history-reason">{head.reason}</span>
      <button
        type="button"
        aria-label={words.read(head.version)}
        onClick={() => {
          onRead(head);
        }}
      >
        {words.readShort}
      </button>
    </li>
  );
}

interface OldProps extends Pick<HistoryProps, 'text' | 'onTake'> {
  readonly old: DocumentVersion;
  readonly onClose: () => void;
}

function OldVersion({ old, text, onTake, onClose }: OldProps): ReactElement {
  const isSame = old.text === text;
  return (
    <section className="history-old" aria-label={words.old(old.version)}>
      <ComparedTexts left={{ title: words.old(old.version), text: old.text }} right={{ title: words.now, text }} />
      {isSame && <p>{words.same}</p>}
      <div className="brief-ways">
        {!isSame && (
          <button
            type="button"
            onClick={() => {
              onTake(old.text);
              announce(words.taken(old.version));
            }}
          >
            {words.take(old.version)}
          </button>
        )}
        <button type="button" onClick={onClose}>
          {words.close}
        </button>
      </div>
    </section>
  );
}
