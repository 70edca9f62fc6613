import { START_WORDS, THREAD_WORDS } from '@fillwright/words/en';
import type { ReactElement } from 'react';

/** What a product becomes here: one sentence with ten blanks. */
export function BlankSentence(): ReactElement {
  return (
    <p className="blank-sentence">
      {START_WORDS.aProduct}{' '}
      {Object.values(THREAD_WORDS.blanks).map(({ lead }) => (
        <span key={lead} className="blank-sentence-part">
          {lead} <span className="blank-sentence-rule" />
        </span>
      ))}
    </p>
  );
}
