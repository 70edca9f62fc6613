import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { openFiles, problemText, type FileNote } from '../../briefs/index.ts';
import { announce } from '../../shell/announcer.tsx';
import { workbench } from '../../state/index.ts';

export interface Begin {
  /** Makes a product of a text, and goes to a page of it. */
  readonly with: (text: () => Promise<string>, page: 'fill' | 'brief') => void;
  /** Makes a product of every brief among the files, and keeps the others. */
  readonly files: (files: readonly File[]) => void;
  readonly isBusy: boolean;
  /** Why the last one did not begin, as one sentence. */
  readonly problem: string | undefined;
  /** What became of the files that were opened last. */
  readonly notes: readonly FileNote[];
}

/**
 * Begins products. What a file reader needs is loaded when the first one is begun.
 *
 * @param onKept - called when something was kept and the page stays
 */
export function useBegin(onKept: () => void): Begin {
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const [notes, setNotes] = useState<readonly FileNote[]>([]);
  const navigate = useNavigate();
  const begin = async (text: () => Promise<string>, page: 'fill' | 'brief'): Promise<void> => {
    const id = await workbench.create(await text());
    await navigate({ to: page === 'fill' ? '/products/$id/fill' : '/products/$id/brief', params: { id } });
  };
  const run = (work: () => Promise<void>): void => {
    setBusy(true);
    setProblem(undefined);
    setNotes([]);
    work()
      .catch((error: unknown) => {
        setProblem(problemText(error));
      })
      .finally(() => {
        setBusy(false);
      });
  };
  return {
    isBusy,
    problem,
    notes,
    with: (text, page) => {
      run(() => begin(text, page));
    },
    files: (files) => {
      run(async () => {
        const opened = await openFiles(files);
        setNotes(opened.notes);
        announce(opened.notes.map(({ sentence }) => sentence).join(' '));
        const [first, ...more] = opened.briefs;
        const hasTrouble = opened.notes.some(({ isAttention }) => isAttention);
        if (first && more.length === 0 && !hasTrouble) {
          await begin(() => Promise.resolve(first.text), 'brief');
          return;
        }
        for (const { text } of opened.briefs) await workbench.create(text);
        onKept();
      });
    },
  };
}
