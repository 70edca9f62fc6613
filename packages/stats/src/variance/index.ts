export type { CrossedComponents } from './crossed-components.ts';
export { crossedComponents } from './crossed-components.ts';
export { lagOneAutocorrelation } from './lag-one-autocorrelation.ts';
export type { NestedComponents } from './nested-components.ts';
export { nestedComponents } from './nested-components.ts';
export type { OneWayAnova } from './one-way-anova.ts';
export { oneWayAnova } from './one-way-anova.ts';
export type { OneWayComponents } from './one-way-components.ts';
export { oneWayComponents } from './one-way-components.ts';
