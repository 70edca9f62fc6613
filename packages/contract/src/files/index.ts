export { changedText, type ValuePath } from './changed-text.ts';
export { fileBeside } from './file-beside.ts';
export { fileKind, type FileKind } from './file-kind.ts';
export { readBrief, type BriefRead } from './read-brief.ts';
export type { FileToRead } from './read-document.ts';
export { readFiller } from './read-filler.ts';
export { readShell } from './read-shell.ts';
export { yamlText, type YamlText } from './yaml-text.ts';
