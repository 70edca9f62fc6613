export { bracketedRoot } from './bracketed-root.ts';
