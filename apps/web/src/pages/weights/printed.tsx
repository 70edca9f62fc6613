import type { WeightsJudgement, WheelOfRevolution } from '@fillwright/engine/weights';
import { conclusionSentence, PURPOSE_WORDS, WEIGHTS_PAGE_WORDS, weightsNoteSentence } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { personName } from '../../state/person.ts';
import { LimitCardTable } from './limit-card.tsx';
import { verdictRows } from './verdict-rows.ts';
import { WeightsPlot } from './weights-plot.tsx';

interface PrintedProps {
  readonly judgement: WeightsJudgement;
  readonly wheel: WheelOfRevolution | undefined;
  readonly product: string;
  readonly version: number;
}

/** 186 mm of paper at 96 px an inch. */
const PAPER = { width_px: 700, height_px: 230 } as const;

/** One page of A4: conclusion, weights, verdicts with their arithmetic, limit card. On the screen it is not shown. */
export function Printed({ judgement, wheel, product, version }: PrintedProps): ReactNode {
  const words = WEIGHTS_PAGE_WORDS.paper;
  const count = judgement.net?.capsuleCount ?? judgement.gross?.capsuleCount ?? 0;
  return (
    <article className="weights-paper">
      <header>
        <h2>{words.title}</h2>
        <p>{words.about({ product, purpose: PURPOSE_WORDS[judgement.purpose], count })}</p>
      </header>
      <p className="weights-paper-first">{conclusionSentence(judgement.conclusion)}</p>
      <WeightsPlot {...{ judgement, wheel }} {...PAPER} />
      <table>
        <thead>
          <tr>
            <th scope="col">{words.test}</th>
            <th scope="col">{words.verdict}</th>
            <th scope="col">{words.sum}</th>
          </tr>
        </thead>
        <tbody>
          {verdictRows(judgement).map(({ key, title, badge, lines }) => (
            <tr key={key}>
              <th scope="row">{title}</th>
              <td>{badge}</td>
              <td>{lines.join(' ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {judgement.card ? <LimitCardTable card={judgement.card} /> : null}
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
