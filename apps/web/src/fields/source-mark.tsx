import { FIELD_WORDS } from '@fillwright/words/en';
import type { ReactElement } from 'react';
import type { SourceMarkKind } from './written-quantity.ts';

/** Full circle: measured; half: learned from weights; open: guess. The words are always there for a screen reader. */
export function SourceMark({ kind, isBare = false }: { kind: SourceMarkKind; isBare?: boolean }): ReactElement {
  return (
    <span className="source-mark">
      <svg className="source-mark-sign" viewBox="0 0 14 14" aria-hidden="true">
        <circle className="source-mark-ring" cx="7" cy="7" r="5.25" />
        {kind === 'measured' && <circle className="source-mark-fill" cx="7" cy="7" r="5.25" />}
        {kind === 'calibrated' && <path className="source-mark-fill" d="M7 1.75a5.25 5.25 0 0 0 0 10.5z" />}
      </svg>
      <span className={isBare ? 'hidden-text' : undefined}>{FIELD_WORDS.marks[kind]}</span>
    </span>
  );
}
