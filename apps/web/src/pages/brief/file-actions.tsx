import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import type { ReactElement } from 'react';
import { FileButton } from '../../briefs/index.ts';

interface FileActionsProps {
  readonly id: string;
  readonly text: string;
  readonly onFile: (file: File) => void;
}

/** Open a brief file, and save the text as one. */
export function FileActions({ id, text, onFile }: FileActionsProps): ReactElement {
  return (
    <>
      <FileButton onFile={onFile}>{BRIEF_PAGE_WORDS.openFile}</FileButton>
      <button
        type="button"
        onClick={() => {
          download(`${id}.brief.yaml`, text);
        }}
      >
        {BRIEF_PAGE_WORDS.saveFile}
      </button>
    </>
  );
}

function download(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'text/yaml' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}
