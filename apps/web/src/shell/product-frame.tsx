import { useEffect, useState, type ReactNode } from 'react';
import { SHELL_WORDS } from '@fillwright/words/en';
import { problemText } from '../briefs/index.ts';
import { useWorkbench, workbench } from '../state/index.ts';
import { ServerProblem } from '../state/documents-client.ts';
import { Keeping } from './keeping.tsx';
import { PersonField } from './person-field.tsx';
import { RestedOn } from './rested-on.tsx';
import { Thread } from './thread.tsx';
import type { Blank } from './thread-of.ts';

/** Opens the product of an address and frames its pages: thread above, page below. */
export function ProductFrame({
  id,
  here,
  children,
}: {
  readonly id: string;
  readonly here: Blank['page'];
  readonly children: ReactNode;
}): ReactNode {
  const [problem, setProblem] = useState<string>();
  const name = useWorkbench(({ brief }) => (brief.kind === 'sound' ? brief.input.brief.product.name : undefined));
  useEffect(() => {
    let isOver = false;
    setProblem(undefined);
    workbench.open(id).catch((error: unknown) => {
      if (!isOver) setProblem(sentenceOf(error, id));
    });
    return () => {
      isOver = true;
    };
  }, [id]);
  useEffect(() => {
    document.title = name === undefined ? SHELL_WORDS.title : `${SHELL_WORDS.title}: ${name}`;
  }, [name]);
  return (
    <>
      <Thread here={here} />
      <main id="page">
        {problem === undefined ? (
          <>
            <Keeping isBriefTold={here === 'brief'} />
            {here === 'fill' && <RestedOn />}
            {children}
          </>
        ) : (
          <p className="frame-problem attention">{problem}</p>
        )}
      </main>
      <PersonField />
    </>
  );
}

function sentenceOf(error: unknown, id: string): string {
  const status = error instanceof ServerProblem ? error.status : 0;
  if (status === 404) return SHELL_WORDS.noSuchProduct(id);
  return status === 0 ? SHELL_WORDS.serverSilent : problemText(error);
}
