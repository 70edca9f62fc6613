import { BRIEF_PAGE_WORDS, FILE_WORDS } from '@fillwright/words/en';
import type { ReactElement } from 'react';
import { download, FileButton } from '../../briefs/index.ts';
import type { NamedFile } from '../../state/index.ts';

interface FileActionsProps {
  readonly id: string;
  readonly text: string;
  /** The files that the brief names. */
  readonly files: readonly NamedFile[];
  readonly onFiles: (files: readonly File[]) => void;
}

/** Open files, and save the text as one, with those it names. */
export function FileActions({ id, text, files, onFiles }: FileActionsProps): ReactElement {
  const brief = { file: `${id}.brief.yaml`, text };
  return (
    <>
      <FileButton onFiles={onFiles}>{BRIEF_PAGE_WORDS.openFile}</FileButton>
      {files.length > 0 ? (
        <SaveMenu files={[brief, ...files]} />
      ) : (
        <button
          type="button"
          onClick={() => {
            download(brief.file, text);
          }}
        >
          {BRIEF_PAGE_WORDS.saveFile}
        </button>
      )}
    </>
  );
}

function SaveMenu({ files }: { files: readonly Pick<NamedFile, 'file' | 'text'>[] }): ReactElement {
  return (
    <details className="examples-menu">
      <summary>{FILE_WORDS.saveFiles}</summary>
      <div className="examples-menu-list">
        <p className="field-help">{FILE_WORDS.saveFilesNote}</p>
        <ul>
          {files.map(({ file, text }) => (
            <li key={file}>
              <button
                type="button"
                onClick={() => {
                  download(file.split('/').at(-1) ?? file, text);
                }}
              >
                {FILE_WORDS.savedText(file)}
              </button>
            </li>
          ))}
        </ul>
      </div>
    </details>
  );
}
