import { FILE_WORDS } from '@fillwright/words/en';
import { Link } from '@tanstack/react-router';
import type { ReactElement } from 'react';
import type { FileNote } from './open-files.ts';

/** What became of the files that were opened, each with a way to where it is kept. */
export function FileNotes({ notes, className }: { notes: readonly FileNote[]; className: string }): ReactElement {
  return (
    <>
      {notes.map(({ sentence, isAttention, kept }) => (
        <p key={sentence} className={className} role={isAttention ? 'alert' : undefined}>
          <span className={isAttention ? 'attention' : undefined}>
            {isAttention && <span aria-hidden="true">▲ </span>}
            {sentence}
          </span>{' '}
          {kept && (
            <Link to="/files/$kind/$id" params={{ ...kept.document }}>
              {FILE_WORDS.see(kept.called)}
            </Link>
          )}
        </p>
      ))}
    </>
  );
}
