import { Link } from '@tanstack/react-router';
import { memo, useMemo, useSyncExternalStore, type ReactNode } from 'react';
import { THREAD_WORDS } from '@fillwright/words/en';
import { useWorkbench } from '../state/index.ts';
import { weighedHere } from '../state/weighed-here.ts';
import { threadOf, type Blank } from './thread-of.ts';
import './thread.css';

/** The product as one sentence with ten blanks: each page's result is the word it hands on. */
export function Thread({ here }: { readonly here: Blank['page'] }): ReactNode {
  const id = useWorkbench((state) => state.id);
  const brief = useWorkbench((state) => state.brief);
  const design = useWorkbench((state) => state.design);
  const size = useWorkbench(({ candidate }) => candidate?.size);
  // A lever that moves keeps its parts: the sentence is not rendered again.
  const parts = useWorkbench(({ candidate }) => candidate?.settings.parts);
  const weighed = useSyncExternalStore(weighedHere.subscribe, weighedHere.get);
  const weighedCount = weighed?.id === id ? weighed?.count : undefined;
  const { name, blanks } = useMemo(
    () => threadOf({ brief, design, size, parts, weighedCount }),
    [brief, design, size, parts, weighedCount],
  );
  return <Sentence {...{ name, blanks, here, id }} />;
}

interface SentenceProps {
  readonly name: string;
  readonly blanks: readonly Blank[];
  readonly here: Blank['page'];
  readonly id: string | undefined;
}

const Sentence = memo(function Sentence({ name, blanks, here, id }: SentenceProps): ReactNode {
  return (
    <nav className="thread no-print" aria-label={THREAD_WORDS.label}>
      <h1 className="thread-name">{name}</h1>
      <ol className="thread-blanks">
        {blanks.map((blank) => (
          <li
            key={blank.page}
            className={`thread-blank thread-${blank.kind}`}
            aria-current={blank.page === here ? 'page' : undefined}
          >
            <span className="thread-lead">{blank.lead}</span> <Word blank={blank} id={id} />
            <span className="thread-page">{blank.label}</span>
          </li>
        ))}
      </ol>
    </nav>
  );
});

function Word({ blank, id }: { readonly blank: Blank; readonly id: string | undefined }): ReactNode {
  const word =
    blank.word === '' ? <span className="thread-nothing" aria-label={THREAD_WORDS.empty} role="img" /> : blank.word;
  if (id === undefined || blank.to === undefined) return <span className="thread-word">{word}</span>;
  return (
    <Link className="thread-word" to={blank.to} params={{ id }}>
      {word}
    </Link>
  );
}
