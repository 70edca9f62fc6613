import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { problemText, readBriefFile } from '../../briefs/index.ts';
import { workbench } from '../../state/index.ts';

export interface Begin {
  /** Makes a product of a text, and goes to a page of it. */
  readonly with: (text: () => Promise<string>, page: 'fill' | 'brief') => void;
  readonly file: (file: File) => void;
  readonly isBusy: boolean;
  /** Why the last one did not begin, as one sentence. */
  readonly problem: string | undefined;
}

/** Begins products. What a file reader needs is loaded when the first one is begun. */
export function useBegin(): Begin {
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const navigate = useNavigate();
  const begin = async (text: () => Promise<string>, page: 'fill' | 'brief'): Promise<void> => {
    const id = await workbench.create(await text());
    await navigate({ to: page === 'fill' ? '/products/$id/fill' : '/products/$id/brief', params: { id } });
  };
  const run = (work: () => Promise<void>): void => {
    setBusy(true);
    setProblem(undefined);
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
    with: (text, page) => {
      run(() => begin(text, page));
    },
    file: (file) => {
      run(async () => {
        const read = await readBriefFile(file);
        if (read.ok) await begin(() => Promise.resolve(read.text), 'brief');
        else setProblem(read.sentence);
      });
    },
  };
}
