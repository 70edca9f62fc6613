import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { openFiles, problemText, valueIn, type AskedFile, type FileNote } from '../../briefs/index.ts';
import { announce } from '../../shell/announcer.tsx';
import { exampleText } from '../../state/documents-client.ts';
import { useWorkbench, workbench } from '../../state/index.ts';
import { briefDocument } from './brief-document.ts';

export interface OpenBrief {
  readonly files: (files: readonly File[]) => void;
  /** Opens the one file that the brief asks for. */
  readonly asked: (files: readonly File[], asked: AskedFile) => void;
  readonly example: (name: string) => void;
  /** What became of the last ones, until the brief is changed. */
  readonly notes: readonly FileNote[];
}

/**
 * Opens files or an example. Fillers and shells are kept, and the brief is read with them. A brief of the same product
 * takes the place of the text, as one step of undo; another product is opened beside this one.
 */
export function useOpenBrief(): OpenBrief {
  const [said, setSaid] = useState<{ readonly notes: readonly FileNote[]; readonly text: string }>();
  const text = useWorkbench((state) => state.text);
  const navigate = useNavigate();
  const say = (notes: readonly FileNote[]): void => {
    setSaid({ notes, text: workbench.state().text });
    announce(notes.map(({ sentence }) => sentence).join(' '));
  };
  const beside = async (other: string): Promise<void> => {
    const id = await workbench.create(other);
    await navigate({ to: '/products/$id/brief', params: { id } });
  };
  const openBrief = async (name: string, opened: string): Promise<FileNote> => {
    const isSame = codeOf(opened) === codeOf(workbench.state().text);
    if (isSame) workbench.setText(opened);
    else await beside(opened);
    const words = isSame ? BRIEF_PAGE_WORDS.opened : BRIEF_PAGE_WORDS.openedOther;
    return { sentence: words(name), isAttention: false };
  };
  const open = async (files: readonly File[], asked?: AskedFile): Promise<void> => {
    const opened = await openFiles(files, asked);
    const notes = [...opened.notes];
    if (notes.some(({ kept }) => kept)) await workbench.reread();
    for (const brief of opened.briefs) notes.push(await openBrief(brief.name, brief.text));
    say(notes);
  };
  const fail = (error: unknown): void => {
    say([{ sentence: problemText(error), isAttention: true }]);
  };
  return {
    notes: said?.text === text ? said.notes : [],
    files: (files) => {
      open(files).catch(fail);
    },
    asked: (files, asked) => {
      open(files, asked).catch(fail);
    },
    example: (name) => {
      exampleText(name).then(beside).catch(fail);
    },
  };
}

function codeOf(text: string): unknown {
  return valueIn(briefDocument(text).value, ['product', 'code']);
}
