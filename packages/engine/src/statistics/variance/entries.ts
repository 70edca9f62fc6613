import type { Entry } from '#catalogue';

/** Catalogue entries of this area. */
export const varianceEntries: readonly Entry[] = [];
