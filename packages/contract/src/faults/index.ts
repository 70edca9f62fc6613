export { conflictAt } from './conflict-at.ts';
export { faultsOfIssues } from './faults-of-issues.ts';
export { fieldOf } from './field-of.ts';
export { parseWith, type Parsed } from './parse-with.ts';
export { rangeConflicts } from './range-conflicts.ts';
export type { SourceDocument } from './source-document.ts';
