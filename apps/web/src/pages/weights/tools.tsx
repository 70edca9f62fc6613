import { WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { FileButton, saveSentence } from '../../briefs/index.ts';
import type { SheetDesk } from './use-weights-sheet.ts';

const words = WEIGHTS_PAGE_WORDS;

interface ToolsProps {
  readonly desk: SheetDesk;
  readonly isEmpty: boolean;
  readonly onFiles: (files: readonly File[]) => void;
}

/** What can be done with the sheet, and what is kept of it. */
export function Tools({ desk, isEmpty, onFiles }: ToolsProps): ReactNode {
  const { undo, redo, state, problem } = desk;
  return (
    <div className="weights-tools no-print">
      <FileButton isSingle accept=".csv,.tsv,.txt,text/plain,text/csv" onFiles={onFiles}>
        {words.openFile}
      </FileButton>
      <button type="button" disabled={!undo} title={words.undoKeys} onClick={undo}>
        {words.undo}
      </button>
      <button type="button" disabled={!redo} title={words.redoKeys} onClick={redo}>
        {words.redo}
      </button>
      <button
        type="button"
        disabled={isEmpty}
        onClick={() => {
          window.print();
        }}
      >
        {words.print}
      </button>
      <span className={problem === undefined ? 'quiet' : 'attention'}>
        {problem ?? saveSentence(state.save, { thing: 'weights', isKeptHere: state.isKeptHere })}
      </span>
    </div>
  );
}
