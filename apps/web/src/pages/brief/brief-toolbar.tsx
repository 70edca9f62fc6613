import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import type { ReactElement, ReactNode } from 'react';
import { useWorkbench, workbench, type NamedFile, type SaveState } from '../../state/index.ts';
import { ExamplesMenu } from './examples-menu.tsx';
import { FileActions } from './file-actions.tsx';
import { saveSentence } from '../../briefs/index.ts';
import type { OpenBrief } from './use-open-brief.ts';

interface ToolbarProps {
  readonly id: string;
  readonly text: string;
  readonly save: SaveState;
  readonly open: OpenBrief;
  /** The files that the brief names. */
  readonly files: readonly NamedFile[];
  readonly children: ReactNode;
}

/** Ways to see the brief, what is kept of it, and what can be done with its text. */
export function BriefToolbar({ id, text, save, open, files, children }: ToolbarProps): ReactElement {
  const canUndo = useWorkbench((state) => state.canUndo);
  const canRedo = useWorkbench((state) => state.canRedo);
  const isKeptHere = useWorkbench((state) => state.isKeptHere);
  const isUnsure = !['kept', 'pending', 'saving'].includes(save.kind) || (!isKeptHere && save.kind !== 'kept');
  return (
    <div className="brief-toolbar no-print">
      {children}
      <p className={isUnsure ? 'brief-save attention' : 'brief-save quiet'}>
        {isUnsure && <span aria-hidden="true">▲ </span>}
        {saveSentence(save, { thing: 'brief', isKeptHere })}
      </p>
      <div className="brief-ways">
        <button
          type="button"
          disabled={!canUndo}
          title={BRIEF_PAGE_WORDS.undoKeys}
          onClick={() => {
            workbench.undo();
          }}
        >
          {BRIEF_PAGE_WORDS.undo}
        </button>
        <button
          type="button"
          disabled={!canRedo}
          title={BRIEF_PAGE_WORDS.redoKeys}
          onClick={() => {
            workbench.redo();
          }}
        >
          {BRIEF_PAGE_WORDS.redo}
        </button>
        <FileActions id={id} text={text} files={files} onFiles={open.files} />
        <ExamplesMenu onExample={open.example} />
      </div>
    </div>
  );
}
