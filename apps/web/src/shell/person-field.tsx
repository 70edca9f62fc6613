import { useId, useState, type ReactNode } from 'react';
import { SHELL_WORDS } from '@fillwright/words/en';
import { personName, rememberPerson, NO_NAME } from '../state/person.ts';
import './person-field.css';

/** The name that is kept with every version of this browser: typed once, unsigned. */
export function PersonField(): ReactNode {
  const id = useId();
  const [name, setName] = useState(() => (personName() === NO_NAME ? '' : personName()));
  return (
    <footer className="person-field no-print">
      <label htmlFor={id}>{SHELL_WORDS.person}</label>
      <input
        id={id}
        value={name}
        maxLength={80}
        autoComplete="name"
        aria-describedby={`${id}-help`}
        onChange={(event) => {
          setName(event.target.value);
          rememberPerson(event.target.value);
        }}
      />
      <span id={`${id}-help`} className="quiet">
        {SHELL_WORDS.personHelp}
      </span>
    </footer>
  );
}
