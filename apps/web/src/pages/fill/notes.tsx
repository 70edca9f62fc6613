import { memo, type ReactNode } from 'react';
import type { Brief, Candidate, CandidateDetails, DocumentNotice } from '@fillwright/engine/design';
import {
  DESIGN_WORDS,
  documentNoticeSentence,
  FILL_WORDS,
  findingSentence,
  HALVED_BY_WORDS,
} from '@fillwright/words/en';
import { AttentionMark, fixed } from '../../drawing/index.ts';
import { halfWidth_mg, narrowings, numbersInSentence } from '../../numbers/index.ts';
import './notes.css';

/** Warnings of the set-up as sentences; they change in the frame of a move. */
export const Warnings = memo(function Warnings({ candidate }: { readonly candidate: Candidate }): ReactNode {
  const { suitability, prediction } = candidate;
  const findings = [...(suitability.grade === 'suitable' ? [] : suitability.reasons), ...prediction.warnings];
  return (
    <section aria-labelledby="warnings-title">
      <h2 id="warnings-title">{FILL_WORDS.warnings}</h2>
      {findings.length === 0 ? <p className="quiet">{FILL_WORDS.noWarnings}</p> : null}
      <ul className="notes">
        {findings.map((finding) => (
          <li key={`${finding.code} ${String(finding.numbers['station'] ?? '')}`}>
            <AttentionMark /> {findingSentence(finding)}
          </li>
        ))}
      </ul>
    </section>
  );
});

/** What to measure to make the forecast narrower, and by how much. */
export const Narrower = memo(function Narrower(props: {
  readonly interval: CandidateDetails['interval'];
  readonly isPending: boolean;
}): ReactNode {
  const { interval, isPending } = props;
  const found = narrowings(interval);
  return (
    <section aria-labelledby="narrower-title" className={isPending ? 'quiet' : undefined}>
      <h2 id="narrower-title">
        {numbersInSentence(({ half }) => FILL_WORDS.narrow(half), {
          half: { text: fixed(halfWidth_mg(interval), 0), number: 'half-width' },
        })}
      </h2>
      {found.length === 0 ? <p className="quiet">{FILL_WORDS.narrowNothing}</p> : null}
      <ol className="notes notes-pairs">
        {found.map(({ by, half_mg }) => (
          <li key={by}>
            <span>{HALVED_BY_WORDS[by] ?? by}</span>{' '}
            <span>
              {numbersInSentence(({ half }) => FILL_WORDS.narrowTo(half), {
                half: { text: fixed(half_mg, 0), number: `narrowed:${by}` },
              })}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
});

/** What people must know of the brief and before they handle product and machine. */
export const Cautions = memo(function Cautions(props: {
  readonly brief: Brief;
  readonly notices: readonly DocumentNotice[];
}): ReactNode {
  const notices = props.notices.map(documentNoticeSentence);
  const cautions = [...(props.brief.cautions ?? []), ...DESIGN_WORDS.usualCautions];
  return (
    <>
      <Sentences title={FILL_WORDS.notices} sentences={notices} />
      <Sentences title={FILL_WORDS.cautions} sentences={cautions} />
    </>
  );
});

function Sentences({ title, sentences }: { readonly title: string; readonly sentences: readonly string[] }): ReactNode {
  if (sentences.length === 0) return null;
  return (
    <section>
      <h2>{title}</h2>
      <ul className="notes">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}
