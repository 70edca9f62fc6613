export { ENTRIES, findEntry } from './find-entry.ts';
export { ROOMS } from './rooms.ts';
