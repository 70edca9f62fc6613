import type { Entry } from '#catalogue';
import { attributeEntries } from './attributes.ts';
import { planEntries } from './plans.ts';
import { variablesEntries } from './variables.ts';

/** Catalogue entries of sampling by attributes and by variables. */
export const samplingEntries: readonly Entry[] = [...planEntries, ...attributeEntries, ...variablesEntries];
