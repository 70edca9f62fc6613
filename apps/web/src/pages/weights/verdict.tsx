import { WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { AttentionMark } from '../../drawing/index.ts';
import { SaidText } from './numbers/said-text.tsx';
import type { VerdictRow } from './rows/verdict-row.ts';

/** One thing that was judged, with its arithmetic. */
export function Verdict({ row }: { readonly row: VerdictRow }): ReactNode {
  const { title, badge, isAct, lines, source } = row;
  return (
    <section className={isAct ? 'weights-verdict weights-act' : 'weights-verdict'}>
      <h3>
        <SaidText pieces={title} />
      </h3>
      <p className="weights-badge">
        {isAct ? <AttentionMark /> : null} {badge}
      </p>
      {lines.map((line, i) => (
        <p key={i}>
          <SaidText pieces={line} />
        </p>
      ))}
      {source === undefined ? null : <p className="quiet">{WEIGHTS_VERDICT_WORDS.source(source)}</p>}
    </section>
  );
}
