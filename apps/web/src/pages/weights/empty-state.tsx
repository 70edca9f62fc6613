import type { LimitCard } from '@fillwright/engine/design';
import { WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { LimitCardTable } from './limit-card.tsx';

interface EmptyProps {
  /** Of the brief, where its shells are known: it is of use before a weight is pasted. */
  readonly card: LimitCard | undefined;
  readonly onExample: () => void;
}

/** Nothing pasted yet: what to bring, an example, and what the weights will be held against. */
export function EmptyState({ card, onExample }: EmptyProps): ReactNode {
  const words = WEIGHTS_PAGE_WORDS;
  return (
    <section className="weights-empty">
      <h2 className="weights-conclusion">{words.empty.title}</h2>
      <div className="weights-empty-columns">
        <div>
          <ol>
            {words.empty.steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          <button type="button" onClick={onExample}>
            {words.empty.example}
          </button>
        </div>
        {card ? <LimitCardTable card={card} title={words.card.titleKnown} /> : null}
      </div>
    </section>
  );
}
