import type { ReactNode } from 'react';
import { useWorkbench, workbench } from '../../state/index.ts';
import { Bench } from './bench.tsx';
import { OpenNumberProvider } from '../../numbers/index.ts';

/** The bench of the product that is open. */
export function FillPage(): ReactNode {
  const state = useWorkbench((one) => one);
  return (
    <OpenNumberProvider>
      <Bench state={state} workbench={workbench} />
    </OpenNumberProvider>
  );
}
