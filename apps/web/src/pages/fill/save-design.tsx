import { useRef, useState, type ReactNode, type SubmitEvent } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import type { SaveOutcome, Workbench, WorkbenchState } from '../../state/index.ts';

const LEAST_REASON = 3;

interface SaveDesignProps extends Pick<Workbench, 'saveDesign'>, Pick<WorkbenchState, 'text'> {
  readonly choice: WorkbenchState['choice'];
}

/** Saves the design as a version; a reason is asked where it replaces a saved one. */
export function SaveDesign({ saveDesign, text, choice }: SaveDesignProps): ReactNode {
  const dialog = useRef<HTMLDialogElement>(null);
  const [said, setSaid] = useState<{ readonly sentence: string } & Pick<SaveDesignProps, 'text' | 'choice'>>();
  const [count, setCount] = useState(0);
  const save = async (reason?: string): Promise<void> => {
    const outcome = await saveDesign(reason);
    if (outcome.kind === 'reason-needed') {
      dialog.current?.showModal();
      return;
    }
    dialog.current?.close();
    setSaid({ sentence: sentenceOf(outcome), text, choice });
    // A reason is for one version: the next one begins empty, but what was not saved keeps its own.
    if (outcome.kind === 'kept') setCount(count + 1);
  };
  return (
    <div className="save-design">
      <button
        type="button"
        onClick={() => {
          void save();
        }}
      >
        {FILL_WORDS.save}
      </button>
      {/* What became of it, until something is changed. */}
      <span className="quiet" role="status">
        {said?.text === text && said.choice === choice ? said.sentence : ''}
      </span>
      <dialog ref={dialog} className="save-design-dialog" aria-labelledby="save-design-title">
        <ReasonForm
          key={count}
          onReason={(reason) => {
            void save(reason);
          }}
          onCancel={() => {
            dialog.current?.close();
          }}
        />
      </dialog>
    </div>
  );
}

function sentenceOf(outcome: SaveOutcome): string {
  switch (outcome.kind) {
    case 'offline':
      return FILL_WORDS.savedOffline;
    case 'conflict':
      return FILL_WORDS.savedConflict;
    case 'trouble':
    case 'refused':
      return FILL_WORDS.savedRefused(outcome.why);
    default:
      return FILL_WORDS.saved;
  }
}

function ReasonForm(props: { readonly onReason: (reason: string) => void; readonly onCancel: () => void }): ReactNode {
  const [reason, setReason] = useState('');
  const [isShort, setShort] = useState(false);
  const onSubmit = (event: SubmitEvent): void => {
    event.preventDefault();
    // The server takes one line.
    const text = reason.replace(/\s+/g, ' ').trim();
    setShort(text.length < LEAST_REASON);
    if (text.length >= LEAST_REASON) props.onReason(text);
  };
  return (
    <form onSubmit={onSubmit} noValidate>
      <h2 id="save-design-title">{FILL_WORDS.reasonTitle}</h2>
      <p className="quiet">{FILL_WORDS.reasonHelp}</p>
      <label>
        {FILL_WORDS.reasonLabel}
        <textarea
          rows={3}
          maxLength={500}
          value={reason}
          aria-invalid={isShort}
          aria-describedby={isShort ? 'save-design-short' : undefined}
          onChange={(event) => {
            setReason(event.target.value);
          }}
        />
      </label>
      {isShort ? (
        <p id="save-design-short" className="attention">
          {FILL_WORDS.reasonShort}
        </p>
      ) : null}
      <p className="save-design-buttons">
        <button type="submit">{FILL_WORDS.save}</button>
        <button type="button" onClick={props.onCancel}>
          {FILL_WORDS.cancel}
        </button>
      </p>
    </form>
  );
}
