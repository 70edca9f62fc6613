import type { Entry } from '#catalogue';
import { entries as measuringDisc } from './measuring-disc/index.ts';
import { spreadEntries } from './spread-entries.ts';

/**
 * Catalogue entries by way of dosing. Apart from the methods themselves, so that a page that doses need not load the
 * catalogue; a test holds the two lists to each other.
 */
export const ENTRIES_OF_METHODS: Readonly<Record<string, readonly Entry[]>> = { 'measuring-disc': measuringDisc };

/** Catalogue entries of all ways of dosing. */
export const entries: readonly Entry[] = [...spreadEntries, ...Object.values(ENTRIES_OF_METHODS).flat()];
