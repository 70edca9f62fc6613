import type { FileDocument } from '@fillwright/contract/documents';
import { useState } from 'react';
import { fileName, openFiles, type FileNote } from '../../../briefs/index.ts';
import { announce } from '../../../shell/announcer.tsx';
import type { FileDesk } from '../../../state/file-desk.ts';

/** Opens a file in the place of the one on the page, as its next version. */
export function useReopen(
  document: FileDocument,
  { desk, again }: { readonly desk: FileDesk; readonly again: () => void },
): { readonly notes: readonly FileNote[]; readonly reopen: (files: readonly File[]) => void } {
  const [notes, setNotes] = useState<readonly FileNote[]>([]);
  const open = async (files: readonly File[]): Promise<void> => {
    // What was typed here becomes a version first, so that it stays in the history.
    await desk.close();
    const { notes: found } = await openFiles(files, { document, file: fileName(document) });
    setNotes(found.map(({ kept: _here, ...note }) => note));
    announce(found.map(({ sentence }) => sentence).join(' '));
    again();
  };
  return {
    notes,
    reopen: (files) => {
      void open(files);
    },
  };
}
