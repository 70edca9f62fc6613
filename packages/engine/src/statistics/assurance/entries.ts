import type { Entry } from '#catalogue';

/** Catalogue entries of this area. */
export const assuranceEntries: readonly Entry[] = [];
