import type { Entry } from '#catalogue';
import { DOSING_METHOD_ENTRIES } from './dosing-method-entries.ts';
import { spreadEntries } from './spread-entries.ts';

/** Catalogue entries of all ways of dosing. */
export const entries: readonly Entry[] = [...spreadEntries, ...Object.values(DOSING_METHOD_ENTRIES).flat()];
