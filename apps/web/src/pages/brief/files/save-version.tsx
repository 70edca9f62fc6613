import { FILE_WORDS } from '@fillwright/words/en';
import { useId, useState, type ReactElement } from 'react';
import { announce } from '../../../shell/announcer.tsx';
import type { SaveOutcome } from '../../../state/index.ts';

const LEAST_REASON = 3;

/** A person says that the file is right: a saved version, with the reason for it. */
export function SaveVersion({ save }: { save: (reason: string) => Promise<SaveOutcome> }): ReactElement {
  const id = useId();
  const [reason, setReason] = useState('');
  const [said, setSaid] = useState('');
  const say = (sentence: string): void => {
    setSaid(sentence);
    announce(sentence);
  };
  return (
    <form
      className="save-version"
      onSubmit={(event) => {
        event.preventDefault();
        void save(reason.trim()).then((outcome) => {
          if (outcome.kind === 'kept') setReason('');
          say(sentenceOf(outcome));
        });
      }}
    >
      <h2 className="brief-aside-title">{FILE_WORDS.saveTitle}</h2>
      <label className="field-label" htmlFor={id}>
        {FILE_WORDS.reason}
      </label>
      <input
        id={id}
        value={reason}
        maxLength={500}
        aria-describedby={`${id}-help`}
        onChange={(event) => {
          setReason(event.target.value);
          setSaid('');
        }}
      />
      <p className="field-help" id={`${id}-help`}>
        {FILE_WORDS.reasonHelp}
      </p>
      <button type="submit" disabled={reason.trim().length < LEAST_REASON}>
        {FILE_WORDS.saveButton}
      </button>
      {said !== '' && <p>{said}</p>}
    </form>
  );
}

function sentenceOf(outcome: SaveOutcome): string {
  if (outcome.kind === 'kept') return FILE_WORDS.saved;
  if (outcome.kind === 'trouble' || outcome.kind === 'refused') return FILE_WORDS.notSaved[outcome.kind](outcome.why);
  return FILE_WORDS.notSaved[outcome.kind];
}
