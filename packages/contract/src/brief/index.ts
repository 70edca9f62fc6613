export { briefNotices } from './brief-notices.ts';
export { briefReferences, type Reference } from './brief-references.ts';
export { briefSchema } from './brief-schema.ts';
export { parseBrief } from './parse-brief.ts';
export type { OwnShells } from './shell-conflicts.ts';
export { targetSchema } from './target-schema.ts';
