import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import { useEffect, useState, type ReactElement } from 'react';
import { listExamples, type Example } from '../../state/documents-client.ts';
import { problemText } from '../../briefs/index.ts';
import './examples-menu.css';

/** The briefs that come with the program. */
export function ExamplesMenu({ onExample }: { onExample: (name: string) => void }): ReactElement {
  const [isOpen, setOpen] = useState(false);
  const [examples, setExamples] = useState<readonly Example[]>();
  const [problem, setProblem] = useState<string>();
  useEffect(() => {
    if (!isOpen) return;
    listExamples('brief').then(setExamples, (error: unknown) => {
      setProblem(problemText(error));
    });
  }, [isOpen]);
  return (
    <details
      className="examples-menu"
      open={isOpen}
      onToggle={(event) => {
        setOpen(event.currentTarget.open);
      }}
    >
      <summary>{BRIEF_PAGE_WORDS.examples}</summary>
      <div className="examples-menu-list">
        <p className="field-help">{problem ?? BRIEF_PAGE_WORDS.examplesNote}</p>
        <ul>
          {examples?.map(({ name, title }) => (
            <li key={name}>
              <button
                type="button"
                onClick={() => {
                  setOpen(false);
                  onExample(name);
                }}
              >
                {title}
              </button>
            </li>
          ))}
        </ul>
      </div>
    </details>
  );
}
