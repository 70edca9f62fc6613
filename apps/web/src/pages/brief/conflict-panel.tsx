import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import type { ReactElement } from 'react';
import type { SaveState } from '../../state/index.ts';
import { ComparedTexts } from '../../briefs/index.ts';

interface ConflictProps {
  readonly save: Extract<SaveState, { kind: 'conflict' }>;
  readonly onResolve: (side: 'mine' | 'theirs') => void;
}

/** Two people changed a text: both texts, and the person chooses. */
export function ConflictPanel({ save, onResolve }: ConflictProps): ReactElement {
  const words = BRIEF_PAGE_WORDS.conflict;
  const { version, by, text } = save.current;
  return (
    <section className="conflict" aria-labelledby="conflict-title">
      <div role="alert">
        <h2 id="conflict-title" className="brief-section-title attention">
          <span aria-hidden="true">▲</span> {words.title(version, by)}
        </h2>
        <p>{words.body}</p>
      </div>
      <ComparedTexts left={{ title: words.theirs(version), text }} right={{ title: words.yours, text: save.yours }} />
      <div className="brief-ways">
        <button
          type="button"
          onClick={() => {
            onResolve('mine');
          }}
        >
          {words.takeMine}
        </button>
        <button
          type="button"
          onClick={() => {
            onResolve('theirs');
          }}
        >
          {words.takeTheirs(version)}
        </button>
      </div>
    </section>
  );
}
