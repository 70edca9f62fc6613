import type { ChangeEvent, ClipboardEvent, KeyboardEvent } from 'react';
import { announce } from '../shell/announcer.tsx';
import { judgedNumber, type NumberKind } from './judged-number.ts';
import { steppedNumber } from './stepped-number.ts';
import { usePageHidden } from './use-page-hidden.ts';
import { useDraft } from './use-draft.ts';
import { numberText } from './written-quantity.ts';

export interface NumberEntry extends NumberKind {
  /** What the document shows. */
  readonly shown: string;
  /** One step of the arrow keys; left out: they do nothing. */
  readonly step: number | undefined;
  /** A number was given, or the field emptied. */
  readonly onNumber: (value: number | undefined) => void;
  /** A text that is no number; left out: it stays in the field until it is corrected. */
  readonly onRefused: ((text: string) => void) | undefined;
}

interface InputProps {
  readonly type: 'text';
  readonly inputMode: 'decimal';
  readonly autoComplete: 'off';
  readonly spellCheck: false;
  readonly value: string;
  /** Text that is not handed on yet: the browser's own undo belongs to it. */
  readonly 'data-typing'?: '';
  readonly onChange: (event: ChangeEvent<HTMLInputElement>) => void;
  readonly onBlur: () => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => void;
  readonly onPaste: (event: ClipboardEvent<HTMLInputElement>) => void;
}

/**
 * Behaviour of a number field: Enter or leaving it hands the number on, Esc gives back what was there, arrows step
 * (Shift: ten), a pasted cell is cleaned. Nothing is clamped, and a text that is no number is never dropped.
 *
 * @param entry - what is shown, what is taken, and where it goes
 * @returns properties of the input, and one sentence where its text is refused or out of range
 */
export function useNumberDraft(entry: NumberEntry): { readonly input: InputProps; readonly sentence?: string } {
  const { shown, step, onNumber, onRefused } = entry;
  const draft = useDraft(shown);
  const judged = judgedNumber(draft.text, entry);
  const hand = (value: number | undefined): void => {
    const text = numberText(value);
    draft.send(text);
    if (text !== shown || draft.text !== shown) onNumber(value);
  };
  const commit = (): void => {
    if (!draft.isDirty) return;
    const { typed } = judged;
    if (typed.kind !== 'refused') hand(typed.kind === 'number' ? typed.value : undefined);
    else if (onRefused) {
      draft.send(draft.text);
      onRefused(draft.text);
    } else {
      draft.check();
      announce(judged.sentence ?? '');
    }
  };
  usePageHidden(commit);
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>): void => {
    const direction = { ArrowUp: 1, ArrowDown: -1 }[event.key];
    if (event.key === 'Enter') commit();
    else if (event.key === 'Escape' && draft.isDirty) {
      event.stopPropagation();
      draft.restore();
    } else if (direction !== undefined && step !== undefined) {
      event.preventDefault();
      const count = direction * (event.shiftKey ? 10 : 1);
      if (judged.typed.kind === 'number') hand(steppedNumber(judged.typed.value, { step, count }));
    }
  };
  const isJudged = !draft.isDirty || draft.isChecked;
  return {
    input: {
      ...{ type: 'text', inputMode: 'decimal', autoComplete: 'off', spellCheck: false, value: draft.text },
      ...(draft.isDirty ? { 'data-typing': '' } : {}),
      onChange: (event) => {
        draft.type(event.target.value);
      },
      onBlur: commit,
      onKeyDown,
      onPaste: (event) => {
        event.preventDefault();
        draft.type(pasted(event));
      },
    },
    ...(isJudged && judged.sentence !== undefined ? { sentence: judged.sentence } : {}),
  };
}

/** Line ends and tabs between cells become blanks: a browser drops them, and 12 and 13 would become 1213. */
function pasted(event: ClipboardEvent<HTMLInputElement>): string {
  const { value, selectionStart, selectionEnd } = event.currentTarget;
  const text = event.clipboardData.getData('text').replace(/\s+/g, ' ').trim();
  return value.slice(0, selectionStart ?? value.length) + text + value.slice(selectionEnd ?? value.length);
}
