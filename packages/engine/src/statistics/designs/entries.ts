import type { Entry } from '#catalogue';

/** Catalogue entries of this area. */
export const designEntries: readonly Entry[] = [];
