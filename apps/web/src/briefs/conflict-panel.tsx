import { KEEPING_WORDS, type KeptThing } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import type { SaveState } from '../state/index.ts';
import { ComparedTexts } from './compared-texts.tsx';
import './conflict-panel.css';
import { standingText } from './standing-text.ts';

interface ConflictProps {
  readonly thing: KeptThing;
  readonly save: Extract<SaveState, { kind: 'conflict' }>;
  readonly onResolve: (side: 'mine' | 'theirs') => void;
}

/** Two people, or two tabs, changed the same: both versions, and the person chooses. */
export function ConflictPanel({ thing, save, onResolve }: ConflictProps): ReactNode {
  const words = KEEPING_WORDS.conflict;
  const { version, by, text } = save.current;
  const shown = thing === 'design' ? standingText : (one: string): string => one;
  return (
    <section className="conflict" aria-labelledby={`conflict-${thing}`}>
      <div role="alert">
        <h2 id={`conflict-${thing}`} className="attention">
          <span aria-hidden="true">▲</span> {words.title[thing](version, by)}
        </h2>
        <p>{words.body[thing]}</p>
      </div>
      <ComparedTexts
        left={{ title: words.theirs(version), text: shown(text) }}
        right={{ title: words.yours, text: shown(save.yours) }}
      />
      <div className="conflict-ways">
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
