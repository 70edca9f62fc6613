export type { BriefState, RestedFile, SaveOutcome, SaveState, Workbench, WorkbenchState } from './workbench-state.ts';
export { useWorkbench } from './use-workbench.ts';
export { workbench } from './workbench.ts';
export { wouldBeLost } from './would-be-lost.ts';
export type { NamedFile } from './named-file.ts';
