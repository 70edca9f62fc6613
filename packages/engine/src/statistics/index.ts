export { entries } from './entries.ts';
export { fromStats } from './from-stats.ts';
