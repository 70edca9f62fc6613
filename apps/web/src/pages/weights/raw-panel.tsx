import type { WeightsSheet } from '@fillwright/contract/documents';
import type { WeightsRead } from '@fillwright/contract/weights';
import { STRUCK_WORDS, WEIGHTS_PAGE_WORDS, weightsFaultSentence } from '@fillwright/words/en';
import { useId, useState, type ReactNode } from 'react';
import { AttentionMark } from '../../drawing/index.ts';
import { RawLines } from './raw-lines.tsx';

interface RawPanelProps {
  readonly part: 'weights' | 'shells';
  readonly text: string;
  readonly read: WeightsRead | undefined;
  readonly marks: ReadonlyMap<number, string>;
  readonly change: (part: Partial<WeightsSheet>) => void;
}

const MOST_TO_DO = 8;

/** A box to paste into; once there is something, what was read of it. */
export function RawPanel({ part, text, read, marks, change }: RawPanelProps): ReactNode {
  const id = useId();
  const [isEdited, setEdited] = useState(false);
  const words = WEIGHTS_PAGE_WORDS;
  const what = words[part];
  const isBox = text.trim() === '' || isEdited;
  return (
    <section className="raw-panel" data-part={part} aria-labelledby={`${id}-title`}>
      <div className="raw-head">
        <h2 id={`${id}-title`}>{what}</h2>
        {isBox ? null : (
          <button
            type="button"
            onClick={() => {
              setEdited(true);
            }}
          >
            {words.edit}
          </button>
        )}
      </div>
      {isBox ? null : <Counts part={part} read={read} />}
      {read?.faults.map((fault) => (
        <p key={`${fault.code} ${fault.line ?? ''}`} className="raw-fault attention" role="alert">
          <AttentionMark /> {weightsFaultSentence(fault)}
        </p>
      ))}
      {isBox ? (
        <PasteBox {...{ id, part, text, change, setEdited }} />
      ) : (
        <>
          {read ? <ToDo read={read} /> : null}
          {read ? <RawLines what={what} lines={read.lines} marks={marks} /> : <p className="quiet">{words.busy}</p>}
        </>
      )}
    </section>
  );
}

interface PasteBoxProps extends Pick<RawPanelProps, 'part' | 'text' | 'change'> {
  readonly id: string;
  readonly setEdited: (isEdited: boolean) => void;
}

function PasteBox({ id, part, text, change, setEdited }: PasteBoxProps): ReactNode {
  const words = WEIGHTS_PAGE_WORDS;
  return (
    <>
      <textarea
        aria-label={words[part]}
        aria-describedby={`${id}-help`}
        className="raw-box"
        rows={part === 'weights' ? 12 : 6}
        spellCheck={false}
        value={text}
        onPaste={(event) => {
          const pasted = event.clipboardData.getData('text/plain');
          if (event.currentTarget.value !== '' || pasted === '') return;
          // Taken as it comes: a text box would change its line ends.
          event.preventDefault();
          change({ [part]: pasted });
          setEdited(false);
        }}
        onFocus={() => {
          setEdited(true);
        }}
        onChange={(event) => {
          change({ [part]: event.target.value });
        }}
        onBlur={() => {
          setEdited(false);
        }}
      />
      <p id={`${id}-help`} className="quiet">
        {part === 'weights' ? words.weightsHelp : words.shellsHelp}
      </p>
    </>
  );
}

function Counts({ part, read }: Pick<RawPanelProps, 'part' | 'read'>): ReactNode {
  if (!read) return null;
  const lines = read.lines.length;
  const struck = read.lines.filter(({ kind }) => kind === 'struck').length;
  const counts = { lines, struck };
  const words = WEIGHTS_PAGE_WORDS;
  return (
    <p className="quiet">
      {words.kept}.{' '}
      {part === 'weights'
        ? words.counts({ ...counts, weights: lines - struck })
        : words.shellCounts({ ...counts, shells: lines - struck })}
    </p>
  );
}

/** Struck lines that may have been weights: row, value, and what to do. */
function ToDo({ read }: { readonly read: WeightsRead }): ReactNode {
  const lines = read.lines.filter((line) => line.kind === 'struck').filter(({ mayBeWeight }) => mayBeWeight);
  if (lines.length === 0) return null;
  const words = WEIGHTS_PAGE_WORDS;
  return (
    <>
      <h3>{words.toDo}</h3>
      <ul className="raw-to-do">
        {lines.slice(0, MOST_TO_DO).map(({ line, raw, reason }) => {
          const { mark, todo = '' } = STRUCK_WORDS[reason];
          return <li key={line}>{words.lineToDo({ line, raw, mark, todo })}</li>;
        })}
      </ul>
      {lines.length > MOST_TO_DO ? <p>{words.moreLines(lines.length - MOST_TO_DO)}</p> : null}
    </>
  );
}
