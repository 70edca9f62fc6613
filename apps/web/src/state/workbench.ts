import { startDesignWorker } from './design-calls.ts';
import { newWorkbench } from './new-workbench.ts';
import { THIS_BROWSER } from './this-browser.ts';
import type { Workbench } from './workbench-state.ts';

/** The one workbench of the app. */
export const workbench: Workbench = newWorkbench({ ...THIS_BROWSER, startWorker: startDesignWorker });
