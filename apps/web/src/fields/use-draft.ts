import { useState } from 'react';

/** What is typed and not yet in the document, and what was sent and has not come back. */
interface Draft {
  readonly text: string;
  /** What the field showed before. */
  readonly base: string;
  readonly sent: readonly string[];
  /** Whether the person left the field with this text: from then on it is judged with every key. */
  readonly isChecked: boolean;
}

export interface DraftText {
  readonly text: string;
  /** Typed and not handed on. */
  readonly isDirty: boolean;
  readonly isChecked: boolean;
  readonly type: (text: string) => void;
  /** Left with a text that is not handed on. */
  readonly check: () => void;
  /** Handed on: shown until the document shows the same. */
  readonly send: (text: string) => void;
  readonly restore: () => void;
}

/**
 * The text of a field between typing and the document. What the document shows wins as soon as it is neither what stood
 * there before nor something this field sent: after undo, or when somebody else changed it.
 *
 * @param shown - what the document shows
 * @returns the text to show, and what can become of it
 */
export function useDraft(shown: string): DraftText {
  const [draft, setDraft] = useState<Draft>();
  const isOver = draft !== undefined && hasSettled(draft, shown);
  if (isOver) setDraft(undefined);
  const now: Draft = draft && !isOver ? draft : { text: shown, base: shown, sent: [], isChecked: false };
  return {
    text: now.text,
    isDirty: now.text !== (now.sent.at(-1) ?? now.base),
    isChecked: now.isChecked,
    type: (text) => {
      setDraft({ ...now, text });
    },
    check: () => {
      setDraft({ ...now, isChecked: true });
    },
    send: (text) => {
      setDraft({ ...now, text, sent: [...now.sent, text], isChecked: false });
    },
    restore: () => {
      setDraft(undefined);
    },
  };
}

function hasSettled({ text, base, sent }: Draft, shown: string): boolean {
  const hasArrived = shown === text && sent.at(-1) === text;
  return hasArrived || (shown !== base && !sent.includes(shown));
}
