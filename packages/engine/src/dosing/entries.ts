import type { Entry } from '#catalogue';
import { DOSING_METHODS } from './dosing-methods.ts';
import { spreadEntries } from './spread-entries.ts';

/** Catalogue entries of all ways of dosing. */
export const entries: readonly Entry[] = [...spreadEntries, ...DOSING_METHODS.flatMap((method) => method.entries)];
