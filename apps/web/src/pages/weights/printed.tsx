import type { WheelOfRevolution } from '@fillwright/engine/weights';
import { conclusionSentence, PURPOSE_WORDS, WEIGHTS_PAGE_WORDS, weightsNoteSentence } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { personName } from '../../state/person.ts';
import { LimitCardTable } from './limit-card.tsx';
import { plainText } from './numbers/plain-text.ts';
import type { Weighed } from './numbers/weighed.ts';
import { RevolutionGrid } from './revolution-grid.tsx';
import type { VerdictRow } from './rows/verdict-row.ts';
import { WeightsPlot } from './weights-plot.tsx';

interface PrintedProps {
  readonly weighed: Weighed;
  readonly rows: readonly VerdictRow[];
  readonly wheel: WheelOfRevolution | undefined;
  readonly product: string;
  readonly version: number;
}

/** 186 mm of paper at 96 px an inch. */
const PAPER = { width_px: 700, height_px: 230 } as const;
/** A larger grid has no room beside the limit card. */
const LARGEST_GRID = { groups: 8, columns: 12 } as const;

/** One page of A4: conclusion, weights, verdicts with their arithmetic, limit card. On the screen it is not shown. */
export function Printed({ weighed, rows, wheel, product, version }: PrintedProps): ReactNode {
  const words = WEIGHTS_PAGE_WORDS.paper;
  const { judgement, masses_mg } = weighed;
  const { revolution } = judgement;
  const fits =
    revolution !== undefined &&
    revolution.cells_mg.length <= LARGEST_GRID.groups &&
    (revolution.cells_mg[0]?.length ?? 0) <= LARGEST_GRID.columns;
  return (
    <article className="weights-paper">
      <header>
        <h2>{words.title}</h2>
        <p>{words.about({ product, purpose: PURPOSE_WORDS[judgement.purpose], count: masses_mg.length })}</p>
      </header>
      <p className="weights-paper-first">{conclusionSentence(judgement.conclusion)}</p>
      <WeightsPlot {...{ judgement, wheel }} {...PAPER} />
      <table className="weights-paper-rows">
        <thead>
          <tr>
            <th scope="col">{words.test}</th>
            <th scope="col">{words.verdict}</th>
            <th scope="col">{words.sum}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, title, badge, lines }) => (
            <tr key={key}>
              <th scope="row">{plainText(title)}</th>
              <td>{badge}</td>
              <td>{lines.map(plainText).join(' ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="weights-paper-foot">
        {judgement.card ? <LimitCardTable card={judgement.card} isOnPaper /> : null}
        {fits ? <RevolutionGrid revolution={revolution} /> : null}
      </div>
      {judgement.notes.map((note) => (
        <p key={note.code}>{weightsNoteSentence(note)}</p>
      ))}
      <footer>
        <p>{words.advice}</p>
        <p>
          {words.signed.map((meaning) => (
            <span key={meaning} className="weights-sign">
              {meaning}:
            </span>
          ))}
        </p>
        <p>
          {words.version(version)}.{' '}
          {words.printed({ at: new Date().toISOString().slice(0, 16) + 'Z', by: personName() })}
        </p>
      </footer>
    </article>
  );
}
