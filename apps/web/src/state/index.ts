export type { BriefState, SaveState, WorkbenchState } from './workbench-state.ts';
export { useWorkbench } from './use-workbench.ts';
export { workbench, type Workbench } from './workbench.ts';
export type { NamedFile } from './named-file.ts';
