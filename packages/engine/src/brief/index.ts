export { entries } from './entries.ts';
export { substanceMass_mg, type SubstanceMassInput } from './substance-mass.ts';
export { targetFill, type SubstanceAtTarget, type TargetFill } from './target-fill.ts';
export type { FixedFill, FixedTotal, FollowsAssay, Overage, Substance, TargetRule } from './target-rule.ts';
