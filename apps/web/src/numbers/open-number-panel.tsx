import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import { useContext, useEffect, useId, useMemo, useRef, type ReactNode } from 'react';
import { AttentionMark } from '../drawing/index.ts';
import { inputRows } from './input-rows.ts';
import type { NumberInterval } from './number-interval.ts';
import { narrowing } from './narrowing.ts';
import type { NumberReference, NumberReferences } from './number-reference.ts';
import { rangeText } from './number-text.ts';
import { LettersContext, useOpenNumber, type Opened as What } from './open-number-context.ts';
import { openedNumber, type OpenedNumber } from './opened-number.ts';
import { PanelEquation } from './panel-equation.tsx';
import { PanelInputs } from './panel-inputs.tsx';
import { PanelRests } from './panel-rests.tsx';
import { UsedBy } from './used-by.tsx';
import { useNumberFacts } from './use-number-facts.ts';
import { useNumberInterval } from './use-number-interval.ts';
import './open-number.css';

/** A number opened in place of the lower band: equation, inputs, what it rests on, what uses it. */
export function OpenNumberPanel(): ReactNode {
  const { current } = useOpenNumber();
  const { facts, references, rank } = useNumberFacts(current);
  const reference = useFollowed(current, references);
  const { interval, isPending } = useNumberInterval(reference?.key, facts);
  if (!reference) return <Gone />;
  return <Opened {...{ reference, references, interval, isPending, rank }} />;
}

/** A number by key follows the levers; when it is gone (a pin was set flush) what it was stays. */
function useFollowed(current: What | undefined, references: NumberReferences): NumberReference | undefined {
  const last = useRef<{ readonly what: What | undefined; readonly reference: NumberReference }>(undefined);
  const key = typeof current === 'string' ? current : current?.key;
  const given = typeof current === 'object' && 'entry' in current ? current : undefined;
  const found = (key === undefined ? undefined : references[key]) ?? given;
  const followed = found ?? (last.current?.what === current ? last.current?.reference : undefined);
  useEffect(() => {
    last.current = followed && { what: current, reference: followed };
  });
  return followed;
}

/** A number that cannot be followed any more: said so, with the way back. */
function Gone(): ReactNode {
  return (
    <section className="open-number">
      <p className="open-number-head">{OPEN_NUMBER_WORDS.gone}</p>
      <div className="open-number-side">
        <Buttons />
      </div>
    </section>
  );
}

interface OpenedProps {
  readonly reference: NumberReference;
  readonly references: NumberReferences;
  readonly interval: NumberInterval | undefined;
  readonly isPending: boolean;
  readonly rank: number | undefined;
}

function Opened({ reference, references, interval, isPending, rank }: OpenedProps): ReactNode {
  const setLetters = useContext(LettersContext);
  const opened = useMemo(() => openedNumber(reference), [reference]);
  const { entry, equation, unit } = opened;
  const rows = useMemo(
    () => (entry ? inputRows(reference, entry, { equation, references }) : []),
    [entry, equation, reference, references],
  );
  useEffect(() => {
    // The drawing shows another set-up: nothing of this one is measured there.
    setLetters(rank === undefined ? (equation?.inDrawing ?? []) : []);
  }, [equation, rank, setLetters]);
  const heading = useId();
  return (
    <section className="open-number" aria-labelledby={heading}>
      <div className="open-number-head">
        <Heading id={heading} opened={opened} />
        {rank === undefined ? null : <p>{OPEN_NUMBER_WORDS.ofRank(rank)}</p>}
        <Interval interval={interval} isPending={isPending} />
        {equation ? <PanelEquation equation={equation} /> : null}
        <Remarks opened={opened} />
      </div>
      <div className="open-number-middle">
        {rows.length > 0 ? <PanelInputs rows={rows} interval={interval} /> : null}
        <UsedBy of={reference.key} references={references} />
      </div>
      <div className="open-number-side">
        <Buttons />
        {entry ? <PanelRests entry={entry} narrower={interval ? narrowing(interval, unit) : []} /> : null}
      </div>
    </section>
  );
}

/** Takes the focus whenever another number opens, so that a reader starts there. */
function Heading({ id, opened }: { readonly id: string; readonly opened: OpenedNumber }): ReactNode {
  const { reference, text } = opened;
  const heading = useRef<HTMLHeadingElement>(null);
  const name = reference.key ?? reference.title;
  useEffect(() => {
    heading.current?.focus();
  }, [name]);
  return (
    <h2 id={id} ref={heading} tabIndex={-1}>
      {text} {reference.title}
    </h2>
  );
}

function Interval({ interval, isPending }: Pick<OpenedProps, 'interval' | 'isPending'>): ReactNode {
  if (!interval) return isPending ? <p className="quiet">{OPEN_NUMBER_WORDS.pending}</p> : null;
  return (
    <p className={isPending ? 'quiet' : ''}>
      {OPEN_NUMBER_WORDS.nineInTen(rangeText(interval.low90, interval.high90))}
    </p>
  );
}

/** What has to be said about the number in words. */
function Remarks({ opened }: { readonly opened: OpenedNumber }): ReactNode {
  const { reference, entry, refusal, differs, others } = opened;
  const words = OPEN_NUMBER_WORDS;
  return (
    <>
      {differs === undefined ? null : (
        <p className="attention">
          <AttentionMark /> {words.differs(differs)}
        </p>
      )}
      {refusal === undefined ? null : (
        <p className="attention">
          <AttentionMark /> {words.refused(refusal)}
        </p>
      )}
      {reference.remark === undefined ? null : <p>{reference.remark}</p>}
      {entry ? null : <p>{words.unknownEntry(reference.entry)}</p>}
      {others.length === 0 ? null : (
        <p>
          {words.outputs} {others.map(({ title, text }) => `${title} ${text}`).join('; ')}.
        </p>
      )}
      {entry?.id.startsWith('dosing.') ? <p className="quiet">{words.unitsNote}</p> : null}
    </>
  );
}

function Buttons(): ReactNode {
  const { back, close, depth } = useOpenNumber();
  const words = OPEN_NUMBER_WORDS;
  return (
    <p className="open-number-buttons">
      {depth > 1 ? (
        <button type="button" onClick={back}>
          {words.back}
        </button>
      ) : null}
      <button type="button" onClick={close}>
        {depth > 1 ? words.close : words.closeByEscape}
      </button>
    </p>
  );
}
