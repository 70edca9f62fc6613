import { BRIEF_TEMPLATE, START_WORDS, WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import { Link } from '@tanstack/react-router';
import { useEffect, useState, type ReactElement } from 'react';
import { FileButton } from '../../briefs/index.ts';
import { exampleText, listExamples, type Example } from '../../state/documents-client.ts';
import type { Begin } from './use-begin.ts';

const DEMO = 'alder-200.brief.yaml';

/** The demo product, a file of one's own, an empty brief; and the other examples. */
export function WaysToBegin({ begin, title }: { begin: Begin; title: string }): ReactElement {
  return (
    <section aria-labelledby="ways-title">
      <h2 id="ways-title">{title}</h2>
      <ol className="ways">
        <Way
          name={START_WORDS.demo}
          note={START_WORDS.demoNote}
          onBegin={() => {
            begin.with(() => exampleText(DEMO), 'fill');
          }}
        />
        <li>
          <FileButton className="way" onFiles={begin.files}>
            <WayWords name={START_WORDS.open} note={START_WORDS.openNote} />
          </FileButton>
        </li>
        <Way
          name={START_WORDS.empty}
          note={START_WORDS.emptyNote}
          onBegin={() => {
            begin.with(() => Promise.resolve(BRIEF_TEMPLATE), 'brief');
          }}
        />
      </ol>
      <p className="start-weights">
        <Link to="/weights">{WEIGHTS_PAGE_WORDS.start}</Link>{' '}
        <span className="quiet">{WEIGHTS_PAGE_WORDS.startNote}</span>
      </p>
      <MoreExamples begin={begin} />
    </section>
  );
}

interface WayProps {
  readonly name: string;
  readonly note: string;
}

function Way({ onBegin, ...words }: WayProps & { onBegin: () => void }): ReactElement {
  return (
    <li>
      <button type="button" className="way" onClick={onBegin}>
        <WayWords {...words} />
      </button>
    </li>
  );
}

function WayWords({ name, note }: WayProps): ReactElement {
  return (
    <>
      <span className="way-name">{name}</span>
      <span className="way-note">{note}</span>
    </>
  );
}

function MoreExamples({ begin }: { begin: Begin }): ReactElement | undefined {
  const [examples, setExamples] = useState<readonly Example[]>([]);
  useEffect(() => {
    // Without them the three ways are left; that the server does not answer is said by the list of products.
    listExamples('brief').then(setExamples, () => undefined);
  }, []);
  const others = examples.filter(({ name }) => name !== DEMO);
  if (others.length === 0) return undefined;
  return (
    <div className="more-examples">
      <h3>{START_WORDS.examples}</h3>
      <p className="quiet">{START_WORDS.examplesNote}</p>
      <ul>
        {others.map(({ name, title }) => (
          <li key={name}>
            <button
              type="button"
              onClick={() => {
                begin.with(() => exampleText(name), 'fill');
              }}
            >
              {title}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
