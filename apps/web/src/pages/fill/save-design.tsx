import { useRef, useState, type ReactNode, type SubmitEvent } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import type { Workbench } from '../../state/index.ts';

const OUTCOMES = {
  kept: FILL_WORDS.saved,
  offline: FILL_WORDS.savedOffline,
  conflict: FILL_WORDS.savedConflict,
  refused: FILL_WORDS.savedRefused,
} as const;
const LEAST_REASON = 3;

/** Saves the design as a version; a reason is asked where it replaces a saved one. */
export function SaveDesign({ saveDesign }: Pick<Workbench, 'saveDesign'>): ReactNode {
  const dialog = useRef<HTMLDialogElement>(null);
  const [said, setSaid] = useState('');
  const save = async (reason?: string): Promise<void> => {
    const outcome = await saveDesign(reason);
    if (outcome === 'reason-needed') dialog.current?.showModal();
    else {
      dialog.current?.close();
      setSaid(OUTCOMES[outcome]);
    }
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
      <span className="quiet" role="status">
        {said}
      </span>
      <dialog ref={dialog} className="save-design-dialog" aria-labelledby="save-design-title">
        <ReasonForm
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

function ReasonForm(props: { readonly onReason: (reason: string) => void; readonly onCancel: () => void }): ReactNode {
  const [reason, setReason] = useState('');
  const [isShort, setShort] = useState(false);
  const onSubmit = (event: SubmitEvent): void => {
    event.preventDefault();
    const text = reason.trim();
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
