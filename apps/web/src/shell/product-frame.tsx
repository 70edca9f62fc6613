import { useEffect, useState, type ReactNode } from 'react';
import { SHELL_WORDS } from '@fillwright/words/en';
import { useWorkbench, workbench } from '../state/index.ts';
import { ServerProblem } from '../state/documents-client.ts';
import { PersonField } from './person-field.tsx';
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
    setProblem(undefined);
    workbench.open(id).catch((error: unknown) => {
      const status = error instanceof ServerProblem ? error.status : 0;
      setProblem(status === 404 ? SHELL_WORDS.noSuchProduct(id) : SHELL_WORDS.serverSilent);
    });
  }, [id]);
  useEffect(() => {
    document.title = name === undefined ? SHELL_WORDS.title : `${SHELL_WORDS.title}: ${name}`;
  }, [name]);
  return (
    <>
      <Thread here={here} />
      <main id="page">{problem === undefined ? children : <p className="frame-problem attention">{problem}</p>}</main>
      <PersonField />
    </>
  );
}
