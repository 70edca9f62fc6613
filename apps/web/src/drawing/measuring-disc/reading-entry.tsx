import { useState, type ReactNode } from 'react';

/** A reading being typed in the place of the old one: Enter takes it, Esc and leaving it do not. */
export function ReadingEntry(props: {
  readonly label: string;
  /** The first character, typed on the lever. */
  readonly first: string;
  /** Says whether the reading was taken; the field stays open where it was refused. */
  readonly onEntered: (text: string) => boolean;
  readonly onClosed: () => void;
}): ReactNode {
  const [text, setText] = useState(props.first);
  return (
    <input
      className="disc-entry"
      type="text"
      inputMode="decimal"
      autoComplete="off"
      spellCheck={false}
      autoFocus
      aria-label={props.label}
      value={text}
      onChange={(event) => {
        setText(event.target.value);
      }}
      onBlur={() => {
        props.onClosed();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape' || (event.key === 'Enter' && (text.trim() === '' || props.onEntered(text)))) {
          event.preventDefault();
          event.stopPropagation();
          props.onClosed();
        }
      }}
    />
  );
}
