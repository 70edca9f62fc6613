import type { Purpose, WeightsJudgement, WheelOfRevolution } from '@fillwright/engine/weights';
import {
  COMPUTING_WORDS,
  conclusionSentence,
  domainErrorSentence,
  WEIGHTS_PAGE_WORDS,
  weightsNoteSentence,
} from '@fillwright/words/en';
import { useEffect, type ReactNode } from 'react';
import { useWidth } from '../../charts/index.ts';
import { AttentionMark } from '../../drawing/index.ts';
import { announce } from '../../shell/announcer.tsx';
import type { WeightsAnswer } from '../../state/weights-calls.ts';
import { LimitCardTable } from './limit-card.tsx';
import { Printed } from './printed.tsx';
import { Causes, RevolutionGrid } from './revolution-grid.tsx';
import { verdictRows, type VerdictRow } from './verdict-rows.ts';
import { WeightsPlot } from './weights-plot.tsx';

const words = WEIGHTS_PAGE_WORDS;
const QUIET: readonly WeightsJudgement['conclusion']['code'][] = ['leave-alone', 'passes', 'no-limits'];

interface JudgedProps {
  readonly answer: WeightsAnswer | 'broken' | undefined;
  readonly wheel: WheelOfRevolution | undefined;
  readonly product: string;
  readonly version: number;
  readonly purpose: Purpose;
}

/** What the weights say: the conclusion first, then the picture, then each verdict with its arithmetic. */
export function Judged({ answer, wheel, product, version, purpose }: JudgedProps): ReactNode {
  const judgement = answer === 'broken' ? undefined : answer?.judgement;
  const sentence = judgement && conclusionSentence(judgement.conclusion);
  useEffect(() => {
    if (sentence !== undefined) announce(sentence);
  }, [sentence]);
  if (answer === 'broken') return <p className="weights-said attention">{COMPUTING_WORDS.broken}</p>;
  if (answer?.refused)
    return (
      <p className="weights-said attention" role="alert">
        {domainErrorSentence(answer.refused.code, answer.refused.facts)}
      </p>
    );
  if (!judgement) return <p className="weights-said quiet">{answer ? words.nothing : words.busy}</p>;
  return (
    <div className="weights-judged">
      <h2 className="weights-conclusion no-print">
        {QUIET.includes(judgement.conclusion.code) ? null : <AttentionMark />} {sentence}
      </h2>
      <div className="weights-middle no-print">
        <Plot judgement={judgement} wheel={wheel} />
        {judgement.revolution ? <RevolutionGrid revolution={judgement.revolution} /> : null}
        {judgement.revolution ? <Causes causes={judgement.revolution.causes} /> : null}
      </div>
      <div className="weights-verdicts no-print">
        <p className="quiet">{words.rules[purpose]}</p>
        {verdictRows(judgement).map((row) => (
          <Verdict key={row.key} row={row} />
        ))}
        {judgement.notes.length > 0 ? (
          <section>
            <h3>{words.notes}</h3>
            <ul>
              {judgement.notes.map((note) => (
                <li key={note.code}>{weightsNoteSentence(note)}</li>
              ))}
            </ul>
          </section>
        ) : null}
        {judgement.card ? <LimitCardTable card={judgement.card} /> : null}
      </div>
      <Printed {...{ judgement, wheel, product, version }} />
    </div>
  );
}

function Plot({ judgement, wheel }: Pick<JudgedProps, 'wheel'> & { judgement: WeightsJudgement }): ReactNode {
  const [width_px, ref] = useWidth(600);
  return (
    <section ref={ref} className="weights-plot" aria-labelledby="plot-title">
      <h3 id="plot-title">{words.plot.title}</h3>
      <WeightsPlot {...{ judgement, wheel, width_px }} height_px={width_px < 480 ? 300 : 380} />
    </section>
  );
}

function Verdict({ row }: { readonly row: VerdictRow }): ReactNode {
  const { title, badge, isAct, lines, source } = row;
  return (
    <section className={isAct ? 'weights-verdict weights-act' : 'weights-verdict'}>
      <h3>{title}</h3>
      <p className="weights-badge">
        {isAct ? <AttentionMark /> : null} {badge}
      </p>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {source === undefined ? null : <p className="quiet">{words.source(source)}</p>}
    </section>
  );
}
