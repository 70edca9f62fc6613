import type { Entry } from '#catalogue';
import { continuousEntries } from './continuous-entries.ts';
import { discreteEntries } from './discrete-entries.ts';

/** Catalogue entries of this area. */
export const distributionEntries: readonly Entry[] = [...continuousEntries, ...discreteEntries];
