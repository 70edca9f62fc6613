import type { WeightsJudgement, WheelOfRevolution } from '@fillwright/engine/weights';
import {
  COMPUTING_WORDS,
  conclusionSentence,
  domainErrorSentence,
  WEIGHTS_PAGE_WORDS,
  weightsNoteSentence,
} from '@fillwright/words/en';
import { useEffect, useMemo, type ReactNode } from 'react';
import { useWidth } from '../../charts/index.ts';
import { AttentionMark } from '../../drawing/index.ts';
import { announce } from '../../shell/announcer.tsx';
import type { WeightsAnswer } from '../../state/weights-calls.ts';
import { Causes } from './causes.tsx';
import { LimitCardTable } from './limit-card.tsx';
import { weighed as weighedOf, type Weighed } from './numbers/weighed.ts';
import { Printed } from './printed.tsx';
import { RevolutionGrid } from './revolution-grid.tsx';
import { verdictRows } from './rows/verdict-rows.ts';
import { Verdict } from './verdict.tsx';
import { WeightsPlot } from './weights-plot.tsx';

const words = WEIGHTS_PAGE_WORDS;
const QUIET: readonly WeightsJudgement['conclusion']['code'][] = ['leave-alone', 'passes', 'no-limits'];

interface JudgedProps {
  readonly answer: WeightsAnswer | 'broken' | undefined;
  /** What stands here is that of the texts before. */
  readonly isPending: boolean;
  readonly wheel: WheelOfRevolution | undefined;
  readonly product: string;
  readonly version: number;
}

/** What the weights say: the conclusion first, then the picture, then each verdict with its arithmetic. */
export function Judged({ answer, isPending, ...about }: JudgedProps): ReactNode {
  const weighed = useMemo(
    () => (answer === undefined || answer === 'broken' ? undefined : weighedOf(answer)),
    [answer],
  );
  useAnnounced(answer);
  if (answer === 'broken') return <p className="weights-said attention">{COMPUTING_WORDS.broken}</p>;
  if (answer?.refused)
    return (
      <p className="weights-said attention" role="alert">
        <AttentionMark /> {domainErrorSentence(answer.refused.code, answer.refused.facts)}
      </p>
    );
  if (answer?.card)
    return (
      <div className="weights-said">
        <h2 className="weights-conclusion">{words.onlyShells}</h2>
        <LimitCardTable card={answer.card} />
      </div>
    );
  if (!weighed) return <p className="weights-said quiet">{answer ? words.nothing : words.busy}</p>;
  return <Sound weighed={weighed} isPending={isPending} {...about} />;
}

/** One announcement for each answer: what was read, and the conclusion. */
function useAnnounced(answer: JudgedProps['answer']): void {
  useEffect(() => {
    if (answer === undefined || answer === 'broken' || !answer.judgement || !answer.read) return;
    const { read, judgement } = answer;
    const struck = read.lines.filter(({ kind }) => kind === 'struck').length;
    const sentence = conclusionSentence(judgement.conclusion);
    announce(words.announced({ count: read.capsules.length, struck, sentence }));
  }, [answer]);
}

type SoundProps = Omit<JudgedProps, 'answer'> & { readonly weighed: Weighed };

function Sound({ weighed, isPending, wheel, product, version }: SoundProps): ReactNode {
  const { judgement } = weighed;
  const { conclusion, revolution, notes, card, purpose } = judgement;
  const rows = useMemo(() => verdictRows(weighed), [weighed]);
  return (
    <div className="weights-judged" aria-busy={isPending} data-pending={isPending ? '' : undefined}>
      <h2 className="weights-conclusion no-print">
        {QUIET.includes(conclusion.code) ? null : <AttentionMark />} {conclusionSentence(conclusion)}
        {isPending ? <span className="weights-reading"> {words.busy}</span> : null}
      </h2>
      <div className="weights-middle no-print">
        <Plot judgement={judgement} wheel={wheel} />
        {revolution ? <RevolutionGrid revolution={revolution} weighed={weighed} /> : null}
        {revolution ? <Causes revolution={revolution} /> : null}
        {card ? <LimitCardTable card={card} /> : null}
      </div>
      <div className="weights-verdicts no-print">
        <p className="quiet">{words.rules[purpose]}</p>
        {rows.map((row) => (
          <Verdict key={row.key} row={row} />
        ))}
        {notes.length > 0 ? (
          <section className="weights-notes">
            <h3>{words.notes}</h3>
            {notes.map((note) => (
              <p key={note.code}>{weightsNoteSentence(note)}</p>
            ))}
          </section>
        ) : null}
      </div>
      <Printed {...{ weighed, rows, wheel, product, version }} />
    </div>
  );
}

function Plot({ judgement, wheel }: Pick<JudgedProps, 'wheel'> & { judgement: WeightsJudgement }): ReactNode {
  const [width_px, ref] = useWidth(600);
  return (
    <section ref={ref} className="weights-plot" aria-labelledby="plot-title">
      <h3 id="plot-title">{words.plot.title}</h3>
      <WeightsPlot {...{ judgement, wheel, width_px }} height_px={width_px < 480 ? 320 : 380} />
    </section>
  );
}
