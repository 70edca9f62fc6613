import { startDesignWorker } from './design-calls.ts';
import { newWorkbench } from './new-workbench.ts';
import type { Workbench } from './workbench-state.ts';

/** The one workbench of the app. */
export const workbench: Workbench = newWorkbench({
  local: () => localStorage,
  session: () => sessionStorage,
  events: () => window,
  startWorker: startDesignWorker,
});
