import type { Entry } from '#catalogue';

/** Catalogue entries of this area. */
export const conformityEntries: readonly Entry[] = [];
