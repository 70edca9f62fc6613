import { useSyncExternalStore } from 'react';
import type { WorkbenchState } from './workbench-state.ts';
import { workbench } from './workbench.ts';

/**
 * A part of the workbench's state; the component renders again when that part is another one.
 *
 * @param select - picks a part; must give the same object while nothing changed
 * @returns the part
 */
export function useWorkbench<Part>(select: (state: WorkbenchState) => Part): Part {
  return useSyncExternalStore(workbench.subscribe, () => select(workbench.state()));
}
