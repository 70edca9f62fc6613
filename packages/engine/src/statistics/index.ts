export { entries } from './entries.ts';
