export type { LotAndLevel } from './code-letter.ts';
export { codeLetter } from './code-letter.ts';
export type { DoubleNumbers, DoubleOrSingle, DoublePlan } from './double-plan.ts';
export { doublePlan } from './double-plan.ts';
export type { Inspection, Letter, Level, Scheme } from './inspection-tables.ts';
export { AQLS, LETTERS, LEVELS } from './inspection-tables.ts';
export type { PlanWanted, SinglePlan } from './single-plan.ts';
export { singlePlan } from './single-plan.ts';
